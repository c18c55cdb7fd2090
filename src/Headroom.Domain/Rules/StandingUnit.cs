using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Rules;

/// <summary>A unit of a design, as far as its place goes.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Standing">Where it stands.</param>
/// <param name="Body">Its model's body; null when the model is not known.</param>
/// <param name="At">Where it is written.</param>
internal sealed record StandingUnit(string Id, Standing Standing, Body? Body, Place At)
{
    /// <summary>The height written with it, for what has no model; null otherwise.</summary>
    public Given<RackUnits>? Own { get; init; }

    /// <summary>Its height [U]; null when not known.</summary>
    public double? Height => (Own ?? Body?.Units)?.Value.Value;
}
