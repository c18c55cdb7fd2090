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
        Each(page, "holds", entry.Story.Holds(entry).Select(holds => Tell(holds, entry.Studied, units)));
        foreach (var group in entry.Beside.GroupBy(row => row.Group))
            Each(page, group.Key, group.Select(row => Tell(row, units.Of(entry.Unit))));
        Each(page, "mends", entry.Advice);
        Each(page, "measured", entry.Measured.Select(comparison => SheetReadings.Tell(comparison, units)));
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

    private static string Tell(Holds holds, Verdict verdict, ShownUnits units)
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

    private static string Tell(BesideRow row, ShownUnit unit)
    {
        var numbers = Numbers.Together([unit.Value(row.Demand), unit.Value(row.Limit)]);
        var asked = numbers[0].Length == 0 ? "not known" : $"asks {numbers[0]} {unit.Symbol}";
        var there = numbers[0].Length == 0 || numbers[1].Length == 0 ? "" : $" of {numbers[1]} {unit.Symbol}";
        return $"{row.Name}: {asked}{there}" + (row.Note.Length == 0 ? "" : $"; {row.Note}");
    }
}
