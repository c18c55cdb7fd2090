using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Acoustics;

/// <summary>Something that is heard, as far as it is known where it stands and how loud it can be.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Model">Its model, or what it is.</param>
/// <param name="Space">The space it stands in; null when not said.</param>
/// <param name="Spot">Where in the space; null when not surveyed.</param>
/// <param name="Rack">The rack it is in; null for none.</param>
/// <param name="Levels">Its fan levels; empty when no figure is known.</param>
/// <param name="At">Where it is written.</param>
public sealed record SoundSource(string Id, string Model, string? Space, Given<Spot>? Spot, Rack? Rack, IReadOnlyList<FanLevel> Levels, Place At)
{
    /// <summary>How many alike stand there.</summary>
    public int Count { get; init; } = 1;

    /// <summary>How many fans one has; null when not known.</summary>
    public int? Fans { get; init; }

    /// <summary>Its size; null when not known.</summary>
    public Body? Body { get; init; }

    /// <summary>The fan level the design states; null when it does not.</summary>
    public int? Stated { get; init; }

    /// <summary>What its ports give.</summary>
    public SwitchLoad Load { get; init; } = SwitchLoad.NotKnown;

    /// <summary>What is to be found out about its sound; null when a figure is known.</summary>
    public string? Question => Levels.Count > 0 ? null
        : Fans == 0 ? $"what is heard of {Model}? it has no fan and no figure, which is not silence: hold a meter 1 m away at night"
        : $"how loud is {Model}? its data sheet declares a sound power in bels, or hold a meter 1 m away";
}
