using Headroom.Domain.Records;

namespace Headroom.Engineering.Record;

/// <summary>Hours in service of units that were put in together.</summary>
public static class FleetHours
{
    private const double DayHours = 24;

    /// <summary>Hours of all units of a batch together, up to a day: those that failed count up to their failure, those in their place from their own day on, those taken out whole up to then.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="failures">Its failures; each with its day where the batch has one.</param>
    /// <param name="on">The day.</param>
    /// <returns>Hours [h]; 0 or more.</returns>
    /// <remarks>Source: hours of a population with units censored when they are taken out, NIST/SEMATECH e-Handbook 8.4.5.1.</remarks>
    public static double Of(FleetBatch batch, IEnumerable<FieldFailure> failures, DateOnly on)
    {
        if (batch.ServiceHours is { } stated)
            return stated;
        if (batch.Installed is not { } from)
            return 0;
        var end = End(batch, on);
        var days = (double)batch.Units * (end.DayNumber - from.DayNumber);
        foreach (var failure in failures)
            days -= failure.Count * (double)((Earlier(failure.Replaced ?? end, end)).DayNumber - Earlier(failure.Failed ?? end, end).DayNumber);
        return DayHours * (batch.PoweredShare ?? 1) * Math.Max(0, days);
    }

    /// <summary>Units of a batch that are in service on a day.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="failures">Its failures.</param>
    /// <param name="on">The day.</param>
    /// <returns>Units; 0 or more.</returns>
    public static int InService(FleetBatch batch, IEnumerable<FieldFailure> failures, DateOnly on) =>
        batch.Removed is { } removed && removed <= on ? 0 : Math.Max(0, batch.Units - failures.Where(failure => failure.Replaced is null || failure.Replaced > on).Sum(failure => failure.Count));

    private static DateOnly End(FleetBatch batch, DateOnly on) => batch.Removed is { } removed ? Earlier(removed, on) : on;

    private static DateOnly Earlier(DateOnly one, DateOnly other) => one < other ? one : other;
}
