using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Readings;

/// <summary>Puts readings beside predictions, in one place for all disciplines.</summary>
internal sealed class ReadingBoard(Job job)
{
    // Half the interval of a hand instrument where none was written: common practice, no source.
    internal const double AssumedInstrumentShare = 0.02;

    private readonly HashSet<Reading> _placed = [];

    /// <summary>The entries with the readings beside them that a discipline can speak of.</summary>
    public List<LedgerEntry> Beside(List<LedgerEntry> entries, Func<IExpectations> make)
    {
        if (job.Readings.Count == 0)
            return entries;
        var expectations = make();
        var index = new Dictionary<string, int>(entries.Count);
        for (var i = 0; i < entries.Count; i++)
            index.TryAdd(entries[i].Id, i);
        foreach (var reading in job.Readings)
        {
            if (expectations.Of(reading) is not { } expected || !index.TryGetValue(expected.EntryId, out var at))
                continue;
            _placed.Add(reading);
            entries[at] = With(entries[at], reading, expected);
        }

        return entries;
    }

    /// <summary>The readings that stand beside nothing.</summary>
    public List<LooseReading> Loose() =>
        [.. job.Readings.Where(reading => !_placed.Contains(reading)).Select(reading => new LooseReading(reading, "nothing was worked out that it could be compared with"))];

    private static LedgerEntry With(LedgerEntry entry, Reading reading, Expectation expected)
    {
        var comparison = Compare(reading, expected);
        entry = entry with { Measured = [.. entry.Measured, comparison] };
        return comparison.Governs ? Govern(entry, reading, expected) : entry;
    }

    private static Comparison Compare(Reading reading, Expectation expected)
    {
        var own = reading.PlusMinus ?? expected.InstrumentPlusMinus ?? Math.Abs(reading.Value) * AssumedInstrumentShare;
        var joint = Math.Sqrt(own * own + expected.PlusMinus * expected.PlusMinus);
        double? difference = expected.Value is { } value ? reading.Value - value : null;
        var governs = expected.OwnQuantity && Sound(reading);
        return new Comparison(reading, expected.Value, difference, joint, governs, expected.Finding ?? Finding(reading, expected, (difference, joint)));
    }

    // Read with something, not known to be out of calibration, a value and not only a bound.
    private static bool Sound(Reading reading) => reading.Instrument is not null && reading.Calibrated != false && !reading.UpperBound;

    private static string Finding(Reading reading, Expectation expected, (double? Difference, double Joint) than)
    {
        if (than.Difference is not { } difference)
            return "nothing to compare it with: the expectation lacks an input";
        if (reading.UpperBound)
            return difference >= -than.Joint ? "an upper bound: it contradicts nothing" : $"at most {Words.Of(reading.Value, reading.Unit)}, below what was expected: {expected.Low}";
        if (Math.Abs(difference) <= than.Joint)
            return "agrees with what was expected";
        return difference > 0 ? $"above what was expected: {expected.High}" : $"below what was expected: {expected.Low}";
    }

    private static LedgerEntry Govern(LedgerEntry entry, Reading reading, Expectation expected)
    {
        var (demand, limit) = expected.IsLimit ? (entry.Demand, (double?)reading.Value) : (reading.Value, entry.Limit);
        var studied = demand is { } d && limit is { } l ? Judge.Known(d, l, entry.Reserve ?? 0) : entry.Studied;
        var worst = expected.IsLimit ? entry.Limit : entry.Demand;
        return entry with
        {
            Demand = demand,
            Limit = limit,
            Studied = studied,
            Question = studied == Verdict.Unknown ? entry.Question : null,
            Parts = null,
            PlusMinus = reading.PlusMinus ?? Math.Abs(reading.Value) * AssumedInstrumentShare,
            Beside = [.. entry.Beside, new BesideRow("worst case", "worked out", expected.IsLimit ? entry.Demand : worst, expected.IsLimit ? worst : entry.Limit, "the reading governs")],
        };
    }
}
