using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Heat;

/// <summary>A unit of the design as far as heat goes.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Body">Its body, with the air it is rated for.</param>
/// <param name="Standing">Where it stands.</param>
/// <param name="Load">What it leaves there.</param>
/// <param name="At">Where it is written.</param>
public sealed record HeatUnit(string Id, Body Body, Standing Standing, HeatLoad Load, Place At)
{
    /// <summary>The rack it is in; null for none.</summary>
    public Rack? Rack { get; init; }

    /// <summary>The space it stands in; null when not said.</summary>
    public string? Space { get; init; }

    /// <summary>What is heard of it and moves its air; null when not known.</summary>
    public SoundModel? Sound { get; init; }

    /// <summary>The fan level the design states; null when it does not.</summary>
    public int? Level { get; init; }

    /// <summary>What became of a fan that was changed; null when none was.</summary>
    public FanChange? Change { get; init; }

    /// <summary>The battery in it; null for none.</summary>
    public BatteryModel? Battery { get; init; }

    /// <summary>True when it has no fan.</summary>
    public bool IsFanless => Sound?.Fans == 0;
}
