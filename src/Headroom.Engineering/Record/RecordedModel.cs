using Headroom.Domain.Ledgers;
using Headroom.Engineering.Reliability;

namespace Headroom.Engineering.Record;

/// <summary>One model of the fleet with how often it fails.</summary>
public sealed record RecordedModel
{
    /// <summary>Probability of both intervals [1].</summary>
    public const double Confidence = 0.9;

    // More batches than this are not listed one by one.
    private const int MostListed = 20;

    internal RecordedModel(FleetRate rate) => Rate = rate;

    internal IReadOnlyList<WorkingInput> Batches { get; init; } = [];

    internal FleetRate Rate { get; }

    /// <summary>The model.</summary>
    public string Model => Rate.Row.Model;

    /// <summary>Which kind of model it is; its own name where the catalogue does not know it.</summary>
    public string Kind => Rate.Kind;

    /// <summary>How many are in service; null when not known.</summary>
    public int? Units => Rate.Row.Units;

    /// <summary>Hours in service of all together [h]; null when not known.</summary>
    public double? Hours => Rate.Row.Service?.Value.Value / 3600;

    /// <summary>How many failed; null when not known.</summary>
    public int? Failures => Rate.Row.Failed;

    /// <summary>Hours until the supplier has sent a new one [h]; null when not known.</summary>
    public double? SupplierHours => Rate.LeadHours;

    /// <summary>The probability with which the shelf is to last until then [1].</summary>
    public double Certainty => Rate.Certainty;

    /// <summary>What was seen in hot places and in cool ones; null when it is not known, or when all stood alike.</summary>
    public (FieldRecord Hot, FieldRecord Cool)? Places => Rate.Strata;

    /// <summary>Hours of units of which nobody wrote how warm they stand [h].</summary>
    public double HoursOfUnknownPlace { get; init; }

    /// <summary>Failures a year of one unit, as believed [1/a]; null when there is nothing to believe.</summary>
    public double? YearRate => Rate.Belief is { } belief ? RateWorking.YearRate(belief.MeanRate) : null;

    /// <summary>The low end of what is believed [1/a]; null as <see cref="YearRate"/>.</summary>
    public double? LeastYearRate => Quantile((1 - Confidence) / 2);

    /// <summary>The high end of what is believed [1/a]; null as <see cref="YearRate"/>.</summary>
    public double? MostYearRate => Quantile((1 + Confidence) / 2);

    /// <summary>The time between failures by the classical interval; null when nothing was seen.</summary>
    public RateRange? Classical => Rate.Seen is { } seen ? FieldRate.Classical(seen.Hours, seen.Failures, Confidence) : null;

    /// <summary>What is missing; null when nothing is.</summary>
    public string? Question => YearRate is null ? "how often does it fail? count service and failures" : null;

    /// <summary>How the rate was worked out.</summary>
    /// <returns>The working.</returns>
    public Working Work()
    {
        var working = RateWorking.Of(Rate);
        return working with { Inputs = [.. working.Inputs, .. Batches.Take(MostListed), .. Batches.Count > MostListed ? [new WorkingInput($"and {Batches.Count - MostListed} more batches", null, "", "fleet.csv")] : Array.Empty<WorkingInput>()] };
    }

    private double? Quantile(double probability) => Rate.Belief is { } belief ? RateWorking.YearRate(FieldRate.RateQuantile(belief, probability)) : null;
}
