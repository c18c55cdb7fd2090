using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles;

/// <summary>Reads the records of a cable tester from a CSV file, whatever its columns are called.</summary>
public static class TesterFile
{
    /// <summary>The pairs as on the plug.</summary>
    private static readonly string[] Pairs = ["1-2", "3-6", "4-5", "7-8"];

    // The words are from memory and common practice, no source; whatever is missing is told by --column.
    private static readonly SheetKind Kind = new(
        "tester results",
        "record",
        [
            new("label", CellKind.Name, "label", "cable label", "cable id", "link id", "id", "drop", "outlet", "link", "bezeichnung", "kabelnummer", "étiquette"),
            new("result", CellKind.Text, "result", "overall result", "overall", "status", "pass/fail", "test result", "ergebnis", "résultat"),
            new("limit", CellKind.Text, "limit", "test limit", "standard", "limit used", "test standard", "grenzwert", "norm", "norme"),
            new("length", CellKind.Quantity, "length", "cable length", "len", "länge", "longueur") { Units = Metres.Units },
            new("margin", CellKind.Quantity, "margin", "headroom", "worst margin", "worst case margin", "reserve", "marge") { Units = Decibels.Units },
            new("day", CellKind.Day, "date", "day", "tested on", "date and time", "date/time", "datum"),
            .. Pairs.Select(pair => new SheetField(LoopOf(pair), CellKind.Quantity, $"loop {pair}", $"pair {pair}", $"resistance {pair}", $"{pair} ohm", $"{pair} resistance") { Units = Ohms.Units }),
            new("remark", CellKind.Aside, "note", "notes", "remark", "remarks", "comment", "operator", "tester", "serial", "serial number", "site", "no", "no.", "nr", "frequency", "cable type", "cable", "adapter", "calibrated"),
        ],
        [["label"], ["result"], ["limit"]]) { Section = [] };

    private static readonly Dictionary<string, TesterVerdict> Verdicts = new(StringComparer.OrdinalIgnoreCase)
    {
        ["pass"] = TesterVerdict.Pass, ["passed"] = TesterVerdict.Pass, ["ok"] = TesterVerdict.Pass, ["bestanden"] = TesterVerdict.Pass,
        ["pass*"] = TesterVerdict.Marginal, ["*pass"] = TesterVerdict.Marginal, ["pass *"] = TesterVerdict.Marginal, ["marginal"] = TesterVerdict.Marginal, ["marginal pass"] = TesterVerdict.Marginal,
        ["fail"] = TesterVerdict.Fail, ["failed"] = TesterVerdict.Fail, ["fail*"] = TesterVerdict.Fail, ["*fail"] = TesterVerdict.Fail, ["fail *"] = TesterVerdict.Fail, ["nicht bestanden"] = TesterVerdict.Fail,
    };

    /// <summary>Reads the file; it is never changed.</summary>
    /// <param name="path">The file, as the person named it.</param>
    /// <param name="columns">Its headings with the field each becomes, where the usual words do not tell.</param>
    /// <returns>The records in the order of the file, or findings that say why not.</returns>
    public static Loaded<IReadOnlyList<TesterResult>> Read(string path, IReadOnlyList<KeyValuePair<string, string>> columns)
    {
        var sheet = new PlainSheet(Kind, new SheetPlan(path, Kind.Name, new Place("what was typed", 0, 0)) { Columns = columns });
        var results = sheet.Read().Select(row => Result(row, sheet)).OfType<TesterResult>().ToList();
        return new(sheet.Slips.Stands ? null : results, sheet.Slips.Findings);
    }

    private static string LoopOf(string pair) => $"loop {pair}";

    private static TesterResult? Result(PlainRow row, PlainSheet sheet)
    {
        foreach (var field in new[] { "label", "result", "limit" })
        {
            if (row.Of(field) is not null)
                continue;
            sheet.Slips.Refuse(SheetCodes.NoKey, row.Row.At, ($"row {row.Row.Number} says no {field}", "label, result and limit in every row", "write it as the tester has it, or take the row out"));
            return null;
        }

        if (!Verdicts.TryGetValue(row.Of("result")!, out var verdict))
        {
            sheet.Slips.Refuse(SheetCodes.NoResult, row.Row.At, ($"row {row.Row.Number} has the result '{Words.Short(row.Of("result")!)}'", "pass, pass*, marginal, fail or fail*", "write what the tester said; a star means closer than it can tell"));
            return null;
        }

        var loops = Pairs.Select(pair => (Pair: pair, Ohms: sheet.Quantity(row, LoopOf(pair)))).Where(one => one.Ohms is not null);
        return new(row.Of("label")!, verdict, row.Of("limit")!, sheet.Quantity(row, "length"), sheet.Quantity(row, "margin"), row.Of("day"),
            [.. loops.Select(one => KeyValuePair.Create(one.Pair, one.Ohms!.Value))], row.Row.At);
    }
}
