using System.Globalization;
using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Domain.Tables;

namespace Headroom.Documents.Workbooks;

/// <summary>The patch schedule and port map as a table: the rows of the paper, every port of every switch once.</summary>
internal static class PortTables
{
    /// <summary>One row a port.</summary>
    public static BookTable Ports(PaperInput input)
    {
        var tables = (PatchSchedule.Blocks(input) ?? []).OfType<Table>().ToList();
        var units = input.Results.Bound.Switches;
        if (tables.Count == 0)
            return new("ports", [new("switch")], []);
        var columns = tables[0].Columns.Select(column => column.Title.Split(" [") is [var name, var unit] ? new BookColumn(name, CellSort.Number, unit.TrimEnd(']')) : new BookColumn(column.Title, column.Anchor == Anchor.End ? CellSort.Number : CellSort.Text)).ToList();
        return new(
            "ports",
            [new("switch"), .. columns],
            [.. tables.SelectMany((table, i) => table.Rows.Select(row => (IReadOnlyList<object?>)[units[i].Id, .. columns.Select((column, c) => Of(column, c < row.Cells.Count ? row.Cells[c].Text : ""))]))]);
    }

    private static object? Of(BookColumn column, string text) => text.Length == 0 || text == "?" ? null
        : column.Sort == CellSort.Number && double.TryParse(text.Replace(Domain.Shown.NumberManner.Current.Point, '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : text;
}
