using System.Globalization;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Remedies;

namespace Headroom.Cli.Csv;

/// <summary>Remedies as comma-separated values (RFC 4180), one a row below a header, numbered as <c>--take</c> counts them.</summary>
internal static class RemediesCsv
{
    private static readonly (string Head, Func<Remedy, string> Cell)[] Columns =
    [
        ("kind", remedy => CsvCell.Text(remedy.Kind)),
        ("text", remedy => CsvCell.Text(remedy.Text)),
        ("cost", remedy => CsvCell.Number((double?)remedy.Cost.Amount)),
        ("parts", remedy => CsvCell.Number((double?)remedy.Cost.Parts)),
        ("labour", remedy => CsvCell.Number((double?)remedy.Cost.Labour)),
        ("currency", remedy => CsvCell.Text(remedy.Cost.Currency)),
        ("not_known", remedy => CsvCell.Text(remedy.Cost.NotKnown ?? "")),
        ("minutes_from", remedy => CsvCell.Number(remedy.Minutes.Low)),
        ("minutes_to", remedy => CsvCell.Number(remedy.Minutes.High)),
        ("gain", remedy => CsvCell.Number(remedy.Gain)),
        ("net_gain", remedy => CsvCell.Number(remedy.NetGain)),
        ("gain_per_hundred", remedy => CsvCell.Number(remedy.GainPerHundred)),
        ("certainty", remedy => remedy.Certainty.ToString().ToLowerInvariant()),
        ("certainty_why", remedy => CsvCell.Text(remedy.CertaintyWhy ?? "")),
        ("cautions", remedy => CsvCell.Text(string.Join(' ', remedy.Cautions.Select(caution => caution.Code)))),
        ("better", remedy => CsvCell.Text(string.Join(' ', remedy.Better.Select(change => change.After.Id).Concat(remedy.Gone.Select(entry => entry.Id))))),
        ("worse", remedy => CsvCell.Text(string.Join(' ', remedy.Worse.Select(change => change.After.Id).Concat(remedy.NewlyAmiss.Select(entry => entry.Id))))),
        ("short_then", remedy => CsvCell.Number(remedy.After.Count(Verdict.Short))),
        ("tight_then", remedy => CsvCell.Number(remedy.After.Count(Verdict.Tight))),
        ("verdict_then", remedy => Words.Of(remedy.After.Verdict)),
    ];

    /// <summary>Writes header and rows, each ended as the RFC wants it.</summary>
    public static string Write(IReadOnlyList<Remedy> remedies) => string.Concat(
        remedies.Select((remedy, index) => string.Join(',', Columns.Select(column => column.Cell(remedy)).Prepend((index + 1).ToString(CultureInfo.InvariantCulture))))
            .Prepend(string.Join(',', Columns.Select(column => column.Head).Prepend("number"))).Select(line => line + "\r\n"));
}
