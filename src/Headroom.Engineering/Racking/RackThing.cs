using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Racking;

/// <summary>Something that stands in a rack, on a shelf or on a desk.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Kind">switch, injector, standby supply, or the kind of a fitting.</param>
/// <param name="Standing">Where it is.</param>
/// <param name="Body">Its model's body; null for a fitting.</param>
/// <param name="Fitting">The fitting; null for a unit with a model.</param>
public sealed record RackThing(string Id, string Kind, Standing Standing, Body? Body, Fitting? Fitting)
{
    /// <summary>The standby supply that feeds it; null for the mains.</summary>
    public string? FedBy { get; init; }

    /// <summary>True when it has a plug for mains outlets.</summary>
    public bool HasPlug { get; init; }

    /// <summary>Its height [U]; null when it takes none.</summary>
    public double? Units => (Fitting?.Height ?? Body?.Units)?.Value.Value;

    /// <summary>How many whole units it fills; 0 when it takes none.</summary>
    public int Fills => IsMounted ? (int)Math.Ceiling(Units!.Value - 1e-9) : 0;

    /// <summary>True when it is screwed to the rails; what has no ears, or no height in a rack, lies on a shelf.</summary>
    public bool IsMounted => Units is not null && Body?.Ears != "none";

    /// <summary>Its depth as written; null when not known.</summary>
    public Given<Metres>? Depth => Fitting is null ? Body?.Depth : Fitting.Depth;

    /// <summary>Its mass as written; null when not known.</summary>
    public Given<Kilograms>? Weight => Fitting is null ? Body?.Weight : Fitting.Weight;

    /// <summary>Its width as written; null when not known.</summary>
    public Given<Metres>? Width => Body?.Width;

    /// <summary>Where its mass comes from, in words.</summary>
    public string WeightOrigin => Origins.Of(Weight);
}
