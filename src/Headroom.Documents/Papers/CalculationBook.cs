using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Papers;

/// <summary>The calculation book: every entry with its full working and source.</summary>
internal static partial class CalculationBook
{
    private static readonly Lettering Mono = new(Face.Mono, 8);
    private static readonly Lettering Aside = Lettering.Cell with { Face = Face.Slanted };

    /// <summary>What stands in it, without what is inside.</summary>
    public static IReadOnlyList<Block> Blocks(PaperInput input)
    {
        var blocks = new List<Block>();
        foreach (var discipline in input.Entries(inside: false).GroupBy(entry => entry.Discipline))
        {
            foreach (var entry in discipline)
                blocks.AddRange(Entry(entry, input.Units));
        }

        return blocks;
    }

    private static IEnumerable<Block> Entry(LedgerEntry entry, ShownUnits units)
    {
        var unit = units.Of(entry.Unit);
        var figures = Numbers.Together([unit.Value(entry.Demand), unit.Value(entry.Limit), unit.Difference(entry.Left)]);
        yield return new Heading($"{entry.Subject}: {entry.What}");
        yield return new Words(entry.Left is null
            ? $"{entry.Id}: {LedgerInWords.Word(entry.Verdict)}. {LedgerInWords.Sentence(entry.Question ?? "")}"
            : $"{entry.Id}: {LedgerInWords.Word(entry.Verdict)}; asked {Numbers.WithUnit(figures[0], unit.Symbol)}, there is {Numbers.WithUnit(figures[1], unit.Symbol)}, left {Numbers.WithUnit(figures[2], unit.Between)}. {LedgerInWords.Sentence(entry.Story.Say(entry))}");
        if (EntryTable.Bar(entry) is { } bar)
            yield return new Drawn(bar);
        var working = entry.Story.Work(entry);
        if (working.Formula.Length > 0)
            yield return new Words(FromFile(working.Formula), Mono);
        if (working.Inputs.Count > 0)
            yield return new Table(
                [new("input") { Grows = true }, new("value", Anchor.End), new("where it comes from")],
                [.. working.Inputs.Select(given => new Row([new(FromFile(given.Name)), new(Value(given.Value, given.Unit, units)), new(FromFile(given.Origin), Aside)]))]);
        if (working.Steps.Count > 0)
            yield return new Table(
                [new("step"), new("sum") { Grows = true }, new("comes to", Anchor.End)],
                [.. working.Steps.Select(step => new Row([new(FromFile(step.Name)), new(FromFile(step.Sum), Mono), new(step.Value is null ? "" : Value(step.Value, step.Unit, units))]))]);
        yield return new Words($"Source: {FromFile(working.Source)}", Aside);
        foreach (var caution in entry.Cautions)
            yield return new Words($"Caution: {caution.Text} {caution.Who}", Lettering.Cell with { Ink = Ink.Ochre });
    }

    // The name of a file tells the reader where to look; where it lies on somebody's disk is nobody's business.
    private static string FromFile(string origin) => Folders().Replace(origin, "");

    [System.Text.RegularExpressions.GeneratedRegex(@"(?:[A-Za-z]:)?[^\s,;()]*[/\\](?=[^\s/\\]+:\d+:\d+)|^[/\\].*[/\\](?=[^/\\]+:\d+:\d+)")]
    private static partial System.Text.RegularExpressions.Regex Folders();

    private static string Value(double? value, string unit, ShownUnits units)
    {
        var shown = units.Of(unit);
        return shown.Value(value) is { } number ? Numbers.Show(number, shown.Symbol) : "not known";
    }
}
