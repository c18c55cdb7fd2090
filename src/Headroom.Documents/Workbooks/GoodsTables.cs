using System.Globalization;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Domain.Shown;
using Headroom.Domain.Tables;

namespace Headroom.Documents.Workbooks;

/// <summary>The pick list and the bill of materials as tables; the latter with prices, never with costs.</summary>
internal static class GoodsTables
{
    /// <summary>One row a line of the pick list.</summary>
    public static BookTable Pick(PaperInput input) => new(
        "pick list",
        [new("box"), new("count", CellSort.Number), new("what"), new("more"), new("remark")],
        [.. Boxes(PickList.Blocks(input) ?? [])]);

    /// <summary>One row a line of goods of the offer.</summary>
    public static BookTable Materials(PaperInput input)
    {
        var money = input.Results.Money;
        return new(
            "bill of materials",
            [new("line", CellSort.Number), new("what"), new("count", CellSort.Number), new("counted in"), new("option"), new("price", CellSort.Money, money?.Currency ?? "")],
            [.. (money?.Lines ?? []).Where(line => !line.IsLabour).Select((line, i) => (IReadOnlyList<object?>)[(double)(i + 1), line.What, (double)line.Count, line.CountUnit.Length > 0 ? line.CountUnit : "pieces", line.Option, line.Net])]);
    }

    private static IEnumerable<IReadOnlyList<object?>> Boxes(IReadOnlyList<Block> blocks)
    {
        var box = "";
        foreach (var block in blocks)
        {
            if (block is Heading heading)
                box = heading.Text.Split(": ", 2)[^1];
            if (block is not Table table)
                continue;
            var titles = table.Columns.Select(column => column.Title).ToList();
            foreach (var row in table.Rows.Where(row => row.Cells.Skip(1).Any(cell => cell.Text.Length > 0)))
            {
                string? At(string title) => titles.IndexOf(title) is >= 0 and var at && at < row.Cells.Count && row.Cells[at].Text is { Length: > 0 } text ? text : null;
                var count = At("count") ?? At("boxes");
                var names = titles.Where(title => title is not ("" or "count" or "boxes" or "remark")).Select(title => (Title: title, Text: At(title))).Where(one => one.Text is not null).ToList();
                yield return
                [
                    box, Number(count), names.Count > 0 ? names[0].Text : null, string.Join("; ", names.Skip(1).Select(one => $"{one.Title} {one.Text}")) is { Length: > 0 } more ? more : null,
                    At("remark") ?? (count is not null && Number(count) is null ? count : null),
                ];
            }
        }
    }

    private static double? Number(string? text) => double.TryParse(text?.Replace(NumberManner.Current.Point, '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;
}
