using System.Globalization;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Domain.Shown;

/// <summary>One entry in words and shown figures, for whichever face: sheet, page or paper.</summary>
public static class EntryInWords
{
    /// <summary>What is asked, what there is and what is left, as they stand side by side; what is left with its unit.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="units">The units shown.</param>
    public static (string Asked, string There, string Left) Figures(LedgerEntry entry, ShownUnits units)
    {
        var unit = units.Of(entry.Unit);
        var numbers = Numbers.Together([unit.Value(entry.Demand), unit.Value(entry.Limit), unit.Difference(entry.Left)]);
        return (numbers[0], numbers[1], Numbers.WithUnit(numbers[2], unit.Between));
    }

    /// <summary>What stands in place of the bar when something is missing; null when nothing is.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="units">The units shown.</param>
    public static string? Question(LedgerEntry entry, ShownUnits units)
    {
        if (entry.Left is not null && entry.Studied != Verdict.Unknown)
            return null;
        var question = entry.Question ?? "what it depends on is not known";
        if (entry.Parts is not { } parts || entry.Demand is null)
            return question;
        var (asked, limit, _) = Figures(entry, units);
        var there = limit.Length == 0 ? "" : $" of {limit}";
        return $"at least {Numbers.WithUnit(asked + there, units.Of(entry.Unit).Symbol)}, {parts.Known} of {parts.All} known; {question}";
    }

    /// <summary>What its interval or somebody's word adds to the verdict, each a sentence without its full stop.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="units">The units shown.</param>
    public static IEnumerable<string> Remarks(LedgerEntry entry, ShownUnits units)
    {
        var unit = units.Of(entry.Unit);
        if (entry.MayBeShort)
            yield return $"may be short: {Figures(entry, units).Left} left, {Numbers.Spread(unit.Difference(entry.PlusMinus)!.Value, unit.Between)}";
        if (entry.Overruled is { } overruled)
            yield return $"studied {LedgerInWords.Word(entry.Studied)}, held {LedgerInWords.Word(entry.Verdict)} by {overruled.By}: {overruled.Because}";
    }

    /// <summary>Up to where it holds, for one input.</summary>
    /// <param name="holds">The input.</param>
    /// <param name="verdict">What the entry was studied as.</param>
    /// <param name="units">The units shown.</param>
    public static string Tell(Holds holds, Verdict verdict, ShownUnits units)
    {
        var unit = units.Of(holds.Unit);
        var from = holds.UpTo ? "up to" : "from";
        var on = holds.UpTo ? "" : " on";
        // Of what is short no value is said to keep the limit; of the rest none leads up to it.
        var limit = unit.Value(holds.AtLimit) is { } atLimit ? $"{from} {Numbers.Show(atLimit, unit.Symbol)}{on}" : verdict == Verdict.Short ? "no value of it alone mends this" : "no value reaches the limit";
        var reserve = holds.AtReserve != holds.AtLimit && unit.Value(holds.AtReserve) is { } atReserve ? $", with its reserve {from} {Numbers.Show(atReserve, unit.Symbol)}{on}" : "";
        var now = unit.Value(holds.Now) is { } value ? $" (now {Numbers.Show(value, unit.Symbol)})" : "";
        return $"{holds.Input}: {limit}{reserve}{now}";
    }

    /// <summary>Another state or way of counting.</summary>
    /// <param name="row">The row.</param>
    /// <param name="unit">How numbers of its unit are shown.</param>
    public static string Tell(BesideRow row, ShownUnit unit)
    {
        var numbers = Numbers.Together([unit.Value(row.Demand), unit.Value(row.Limit)]);
        var asked = numbers[0].Length == 0 ? "not known" : $"asks {numbers[0]} {unit.Symbol}";
        var there = numbers[0].Length == 0 || numbers[1].Length == 0 ? "" : $" of {numbers[1]} {unit.Symbol}";
        return $"{row.Name}: {asked}{there}" + (row.Note.Length == 0 ? "" : $"; {row.Note}");
    }

    /// <summary>A reading beside its prediction, in one sentence.</summary>
    /// <param name="comparison">The two.</param>
    /// <param name="units">The units shown.</param>
    public static string Tell(Comparison comparison, ShownUnits units)
    {
        var unit = units.Of(comparison.Reading.Unit);
        var expected = unit.Value(comparison.Predicted) is { } value ? $", expected {Numbers.Show(value, unit.Symbol)}" : "";
        return $"{Tell(comparison.Reading, units)}{expected}: {comparison.Finding}";
    }

    /// <summary>A reading by itself.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="units">The units shown.</param>
    public static string Tell(Reading reading, ShownUnits units)
    {
        var unit = units.Of(reading.Unit);
        var spread = unit.Difference(reading.PlusMinus) is { } half ? " " + Numbers.Spread(half, "") : "";
        var most = reading.UpperBound ? "at most " : "";
        var on = reading.On is { } day ? $" on {day.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}" : "";
        string?[] parts = [reading.Instrument, reading.Pair is { } pair ? $"pair {pair}" : null, reading.Method, reading.Direction, reading.While];
        return $"{reading.Where}  {most}{Numbers.Show(unit.Value(reading.Value)!.Value)}{spread} {unit.Symbol}{on}{string.Concat(parts.OfType<string>().Select(part => ", " + part))}";
    }
}
