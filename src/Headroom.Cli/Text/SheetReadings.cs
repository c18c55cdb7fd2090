using System.Globalization;
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
            page.Paragraph($"{page.Pen.Bar.Measured} {EntryInWords.Tell(comparison, units)}", 2, 4);
        foreach (var loose in ledger.LooseReadings)
            page.Paragraph($"{page.Pen.Bar.Measured} {EntryInWords.Tell(loose.Reading, units)}: {loose.Why}", 2, 4);
    }
}
