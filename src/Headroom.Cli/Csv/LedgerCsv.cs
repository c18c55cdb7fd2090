using System.Globalization;
using Headroom.Cli.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Csv;

/// <summary>The entries as comma-separated values (RFC 4180), one a row below a header, for a spreadsheet. Numbers as worked out; empty for what is not known.</summary>
internal static class LedgerCsv
{
    private static readonly (string Head, Func<LedgerEntry, string> Cell)[] Columns =
    [
        ("id", entry => CsvCell.Text(entry.Id)),
        ("discipline", entry => CsvCell.Text(entry.Discipline)),
        ("subject", entry => CsvCell.Text(entry.Subject)),
        ("quantity", entry => CsvCell.Text(entry.Quantity)),
        ("what", entry => CsvCell.Text(entry.What)),
        ("unit", entry => CsvCell.Text(entry.Unit)),
        ("kind", entry => CsvCell.Text(entry.Kind)),
        ("sense", entry => EntryJson.Sense(entry.Sense)),
        ("demand", entry => CsvCell.Number(entry.Demand)),
        ("peak", entry => CsvCell.Number(entry.Peak)),
        ("limit", entry => CsvCell.Number(entry.Limit)),
        ("reserve", entry => CsvCell.Number(entry.Reserve)),
        ("left", entry => CsvCell.Number(entry.Left)),
        ("plus_minus", entry => CsvCell.Number(entry.PlusMinus)),
        ("may_be_short", entry => entry.MayBeShort ? "yes" : "no"),
        ("verdict", entry => Words.Of(entry.Verdict)),
        ("studied", entry => Words.Of(entry.Studied)),
        ("known", entry => entry.Parts?.Known.ToString(CultureInfo.InvariantCulture) ?? ""),
        ("all", entry => entry.Parts?.All.ToString(CultureInfo.InvariantCulture) ?? ""),
        ("question", entry => CsvCell.Text(entry.Question ?? "")),
        ("cautions", entry => CsvCell.Text(string.Join(" ", entry.Cautions.Select(caution => caution.Code)))),
        ("advice", entry => CsvCell.Text(string.Join("; ", entry.Advice))),
        ("assumed", entry => CsvCell.Text(string.Join("; ", entry.Assumed))),
        ("overruled_by", entry => CsvCell.Text(entry.Overruled?.By ?? "")),
        ("overruled_because", entry => CsvCell.Text(entry.Overruled?.Because ?? "")),
    ];

    /// <summary>Writes header and rows, each ended as the RFC wants it.</summary>
    public static string Write(IReadOnlyList<LedgerEntry> entries)
    {
        var rows = entries.Select(entry => string.Join(',', Columns.Select(column => column.Cell(entry))));
        return string.Concat(rows.Prepend(string.Join(',', Columns.Select(column => column.Head))).Select(row => row + "\r\n"));
    }
}
