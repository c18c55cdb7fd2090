using System.Globalization;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>What was measured on site, beside what was expected of it, and the readings nothing could be compared with.</summary>
internal static class SheetReadings
{
    /// <summary>Writes the readings, and the overrulings that no entry took, as far as there are any.</summary>
    public static void Write(Page page, Ledger ledger, ShownUnits units)
    {
        WriteReadings(page, ledger, units);
        if (ledger.LooseOverrulings.Count == 0)
            return;
        page.Gap();
        page.Line("Overruled, but not among what was worked out");
        foreach (var overruling in ledger.LooseOverrulings)
            page.Paragraph($"{overruling.Entry}, by {overruling.By}, {overruling.On.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}: {overruling.Because}", 2, 4);
    }

    private static void WriteReadings(Page page, Ledger ledger, ShownUnits units)
    {
        var compared = ledger.Entries.SelectMany(entry => entry.Measured).DistinctBy(comparison => (comparison.Reading, comparison.Finding)).ToList();
        if (compared.Count == 0 && ledger.LooseReadings.Count == 0)
            return;
        page.Gap();
        page.Line("Measured");
        foreach (var comparison in compared)
            page.Paragraph($"{page.Pen.Bar.Measured} {Tell(comparison, units)}", 2, 4);
        foreach (var loose in ledger.LooseReadings)
            page.Paragraph($"{page.Pen.Bar.Measured} {Tell(loose.Reading, units)}: {loose.Why}", 2, 4);
    }

    /// <summary>A reading beside its prediction, in one sentence.</summary>
    public static string Tell(Comparison comparison, ShownUnits units)
    {
        var unit = units.Of(comparison.Reading.Unit);
        var expected = unit.Value(comparison.Predicted) is { } value ? $", expected {Numbers.Show(value, unit.Symbol)}" : "";
        return $"{Tell(comparison.Reading, units)}{expected}: {comparison.Finding}";
    }

    private static string Tell(Reading reading, ShownUnits units)
    {
        var unit = units.Of(reading.Unit);
        var spread = unit.Difference(reading.PlusMinus) is { } half ? " " + Numbers.Spread(half, "") : "";
        var most = reading.UpperBound ? "at most " : "";
        var on = reading.On is { } day ? $" on {day.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}" : "";
        return $"{reading.Where}  {most}{Numbers.Show(unit.Value(reading.Value)!.Value)}{spread} {unit.Symbol}{on}{How(reading)}";
    }

    private static string How(Reading reading)
    {
        string?[] parts = [reading.Instrument, reading.Pair is { } pair ? $"pair {pair}" : null, reading.Method, reading.Direction, reading.While];
        return string.Concat(parts.OfType<string>().Select(part => ", " + part));
    }
}
