using System.Globalization;
using Headroom.Cli.Text;
using Headroom.Engineering.Acceptance;

namespace Headroom.Cli.Csv;

/// <summary>The drops with how they stand, as comma-separated values (RFC 4180); behind them the labels that are no drop.</summary>
internal static class AcceptanceCsv
{
    private static readonly string[] Heads = ["label", "standing", "reason", "told", "records", "retested", "limit", "length_m", "margin_db", "day", "pairs"];

    /// <summary>Writes header and rows, each ended as the RFC wants it.</summary>
    public static string Write(AcceptanceResult result) => string.Concat(
        result.Drops.Select(Row).Concat(result.Strange.Select(Row)).Prepend(Heads).Select(cells => string.Join(',', cells) + "\r\n"));

    private static string[] Row(DropAcceptance drop) =>
    [
        CsvCell.Text(drop.Id), AcceptanceWords.Of(drop.Standing), AcceptanceWords.Of(drop.Reason), CsvCell.Text(drop.Told), drop.Records.Count.ToString(CultureInfo.InvariantCulture),
        drop.Retested ? "yes" : "no", CsvCell.Text(drop.Last?.Limit ?? ""), CsvCell.Number(drop.Last?.Metres), CsvCell.Number(drop.Last?.MarginDecibels), CsvCell.Text(drop.Last?.Day ?? ""),
        CsvCell.Text(string.Join(" ", drop.Pairs)),
    ];

    private static string[] Row(StrangeLabel strange) =>
    [
        CsvCell.Text(strange.Record.Label), "no drop", strange.Near is null ? "" : "near", CsvCell.Text(strange.Near is { } near ? $"is {near} meant?" : ""), "1",
        "no", CsvCell.Text(strange.Record.Limit), CsvCell.Number(strange.Record.Metres), CsvCell.Number(strange.Record.MarginDecibels), CsvCell.Text(strange.Record.Day ?? ""), "",
    ];
}
