using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;

namespace Headroom.Desk.Shown;

/// <summary>One entry or figure opened: its working with where each input comes from, and what stands around it.</summary>
/// <param name="Line">The row of the entry; null for a figure.</param>
/// <param name="Id">Its id.</param>
/// <param name="Title">What it is.</param>
/// <param name="Said">What it came to, in a sentence.</param>
/// <param name="Formula">The formula, in lines.</param>
/// <param name="Inputs">The inputs: name, value, origin.</param>
/// <param name="Steps">The steps: what, sum, value.</param>
/// <param name="Source">The published source.</param>
/// <param name="Around">What stands around it: label and texts.</param>
/// <param name="Overruled">True when its verdict was set aside.</param>
public sealed record EntryModel(
    LedgerLine? Line,
    string Id,
    string Title,
    string Said,
    IReadOnlyList<string> Formula,
    IReadOnlyList<(string Name, string Value, string Origin)> Inputs,
    IReadOnlyList<(string What, string Sum, string Value)> Steps,
    string Source,
    IReadOnlyList<(string Label, IReadOnlyList<string> Texts)> Around,
    bool Overruled)
{
    /// <summary>Opens an entry or a figure of a ledger; null when there is none of that id.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="id">The id.</param>
    public static EntryModel? Of(Ledger ledger, string id)
    {
        if (ledger.Entries.FirstOrDefault(entry => entry.Id == id) is { } entry)
            return Of(entry);
        return ledger.Figures.FirstOrDefault(figure => figure.Id == id) is { } figure
            ? Of((null, figure.Id, $"{figure.Subject}: {figure.What}", figure.Question ?? ""), figure.Work(), [], false)
            : null;
    }

    private static EntryModel Of(LedgerEntry entry)
    {
        var unit = ShownUnits.Metric.Of(entry.Unit);
        List<(string, IReadOnlyList<string>)> around =
        [
            ("holds", [.. entry.Story.Holds(entry).Select(holds => EntryInWords.Tell(holds, entry.Studied, ShownUnits.Metric))]),
            .. entry.Beside.GroupBy(row => row.Group).Select(group => (group.Key, (IReadOnlyList<string>)[.. group.Select(row => EntryInWords.Tell(row, unit))])),
            ("mends", [.. entry.Advice.Select(LedgerInWords.Sentence)]),
            ("measured", [.. entry.Measured.Select(comparison => EntryInWords.Tell(comparison, ShownUnits.Metric))]),
            ("assumed", [.. entry.Assumed.Distinct()]),
            ("take care", [.. entry.Cautions.Select(LedgerModel.Caution)]),
        ];
        if (entry.Overruled is { } overruled)
            around.Add(("overruled", [$"held {LedgerInWords.Word(entry.Verdict)} by {overruled.By}, {LedgerModel.Day(overruled.On)}: {overruled.Because}"]));
        return Of((LedgerModel.Line(entry), entry.Id, $"{entry.Subject}: {entry.What}", LedgerInWords.Sentence(entry.Story.Say(entry))), entry.Story.Work(entry), [.. around.Where(part => part.Item2.Count > 0)], entry.Overruled is not null);
    }

    private static EntryModel Of((LedgerLine? Line, string Id, string Title, string Said) head, Working working, IReadOnlyList<(string, IReadOnlyList<string>)> around, bool overruled) => new(
        head.Line,
        head.Id,
        head.Title,
        head.Said,
        working.Formula.Split('\n', StringSplitOptions.RemoveEmptyEntries),
        [.. working.Inputs.Select(input => (input.Name, Value(input.Value, input.Unit), input.Origin))],
        [.. working.Steps.Select(step => (step.Name, step.Sum, step.Value is null && step.Unit.Length == 0 ? "" : Value(step.Value, step.Unit)))],
        working.Source,
        around,
        overruled);

    private static string Value(double? value, string unit) => value is { } number ? Numbers.Show(number, unit) : "unknown";
}
