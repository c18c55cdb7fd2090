using System.Globalization;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>What stands around a working: up to where it holds, other states and settings, what mends it, what was measured, assumed and overruled.</summary>
internal static class ExplainedAround
{
    /// <summary>Writes it, as far as there is any.</summary>
    public static void Write(Page page, LedgerEntry entry, ShownUnits units)
    {
        page.Gap();
        Each(page, "holds", entry.Story.Holds(entry).Select(holds => EntryInWords.Tell(holds, entry.Studied, units)));
        foreach (var group in entry.Beside.GroupBy(row => row.Group))
            Each(page, group.Key, group.Select(row => EntryInWords.Tell(row, units.Of(entry.Unit))));
        Each(page, "mends", entry.Advice);
        Each(page, "measured", entry.Measured.Select(comparison => EntryInWords.Tell(comparison, units)));
        Each(page, "assumed", entry.Assumed.Distinct());
        Each(page, "take care", entry.Cautions.Select(caution => $"{caution.Code}  {Words.Sentence(caution.Text)} {Words.Sentence(caution.Who)}"));
        if (entry.Overruled is { } overruled)
            page.Labelled("overruled", $"held {Words.Of(entry.Verdict)} by {overruled.By}, {overruled.On.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}: {overruled.Because}", Explanation.Indent, Explanation.Label);
    }

    private static void Each(Page page, string label, IEnumerable<string> texts)
    {
        foreach (var (text, index) in texts.Select((text, index) => (text, index)))
            page.Labelled(index == 0 ? label : "", text, Explanation.Indent, Explanation.Label);
    }
}
