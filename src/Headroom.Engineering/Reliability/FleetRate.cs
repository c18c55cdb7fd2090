using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Reliability;

/// <summary>What is believed of one model of the fleet.</summary>
/// <param name="row">The row.</param>
/// <param name="body">The model's body; null when the catalogue does not know it.</param>
internal sealed class FleetRate(FleetRow row, Body? body)
{
    /// <summary>The probability with which a shelf is to last where nobody wrote it [1]: common practice, no source.</summary>
    public const double UsualCertainty = 0.95;

    /// <summary>Which kind of model it is: only alike things are compared.</summary>
    public string Kind { get; init; } = "";

    /// <summary>The row.</summary>
    public FleetRow Row => row;

    /// <summary>The model's body.</summary>
    public Body? Body => body;

    /// <summary>What was seen; null when service or failures are not written.</summary>
    public FieldRecord? Seen => row is { Service: { } service, Failed: { } failed } ? new(failed, service.Value.Value / 3600) : null;

    /// <summary>The catalogue's time between failures [h]; null when not known.</summary>
    public double? CatalogueHours => body?.BetweenFailures?.Value.Value / 3600;

    /// <summary>What is believed before anything was seen; null without a catalogue figure.</summary>
    public RateBelief? Prior => CatalogueHours is { } hours ? FieldRate.FromCatalogue(hours) : null;

    /// <summary>What is believed; null when there is nothing to believe.</summary>
    public RateBelief? Belief => (Prior, Seen) switch
    {
        ({ } prior, { } seen) => prior.After(seen.Failures, seen.Hours),
        ({ } prior, null) => prior,
        (null, { } seen) => FieldRate.FromNothing(seen.Failures, seen.Hours),
        _ => null,
    };

    /// <summary>Hours until new ones come [h]; null when not known.</summary>
    public double? LeadHours => row.Supplier?.Value.Value / 3600;

    /// <summary>The probability wanted [1].</summary>
    public double Certainty => row.Certainty?.Value.Value ?? UsualCertainty;

    /// <summary>Spares wanted; null when something is not known.</summary>
    public int? Needed => row.Units is { } units && LeadHours is { } lead && Belief is { } belief ? SpareParts.Needed(belief, units * lead, Certainty) : null;

    /// <summary>Where the numbers of units and failures were counted.</summary>
    public string CountedIn { get; init; } = "fleet";

    /// <summary>Hot and cool records; null when it is not written which of the units stood hot, or all did or none.</summary>
    public (FieldRecord Hot, FieldRecord Cool)? Strata { get => field ?? InRow; init; }

    private (FieldRecord Hot, FieldRecord Cool)? InRow => Seen is { } seen && row is { HotService: { } hot, HotFailed: { } failed } && hot.Value.Value / 3600 < seen.Hours
        ? (new(failed, hot.Value.Value / 3600), new(seen.Failures - failed, seen.Hours - hot.Value.Value / 3600))
        : null;
}
