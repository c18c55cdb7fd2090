using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>One entry ready for the table: its words and figures as shown.</summary>
internal sealed record SheetRow(LedgerEntry Entry, string Subject, string What, string Asked, string There, string Left)
{
    /// <summary>Whether the question stands in the place of the figures.</summary>
    public bool Asks => Entry.Left is null || Entry.Studied == Verdict.Unknown;

    /// <summary>Makes the row of an entry.</summary>
    public static SheetRow Of(LedgerEntry entry, ShownUnits units, Pen pen)
    {
        var unit = units.Of(entry.Unit);
        var numbers = Numbers.Together([unit.Value(entry.Demand), unit.Value(entry.Limit), unit.Difference(entry.Left)]);
        return new(entry, pen.Plain(entry.Subject), pen.Plain(entry.What), numbers[0], numbers[1], pen.Plain(Numbers.WithUnit(numbers[2], unit.Between)));
    }

    /// <summary>What stands in place of the bar when something is missing.</summary>
    public string Question(ShownUnits units) => EntryInWords.Question(Entry, units)!;
}
