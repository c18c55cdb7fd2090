using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Sheets;

/// <summary>Reads a sheet whose rows go into no job, with the same guards as those that do: encoding, separator, decimal sign, days, mangled cells.</summary>
internal sealed class PlainSheet(SheetKind kind, SheetPlan plan)
{
    private readonly SheetSlips _slips = new();

    /// <summary>What is wrong with it.</summary>
    public SheetSlips Slips => _slips;

    /// <summary>The rows; empty, with findings, when it cannot be read.</summary>
    public IReadOnlyList<PlainRow> Read()
    {
        var loaded = TextFile.ReadAs(plan.File, bytes => SheetEncoding.Decode(bytes.Span, plan.File, plan.Encoding));
        _slips.Take(loaded.Findings);
        if (loaded.Value is not { } text)
            return [];
        _slips.Take(TextGuard.Characters(text.Text, new Place(plan.File, 1, 1)));
        var found = SheetSeparator.Find(text.Text, null);
        if (found.Rival is { } rival)
            _slips.Refuse(SheetCodes.Separator, new Place(plan.File, 1, 1), SheetSeparator.Unclear(found.Sign, rival));
        return new SheetTableReader(text.Text, plan.File, _slips).Read(found.Sign, found.From) is { } table ? Rows(table, found.Sign) : [];
    }

    /// <summary>A quantity of a row in its base unit; null when nothing is said, or when a finding was made.</summary>
    public double? Quantity(PlainRow row, string field)
    {
        if (row.Of(field) is not { } text)
            return null;
        var known = kind.Find(field)!;
        if (QuantityText.Measure(text, known.Units!, out var problem) is { } found)
            return found.Value;
        _slips.Refuse(SheetCodes.NoQuantity, row.Row.At, ($"row {row.Row.Number} says '{Words.Short(text)}' for {field}", problem!.Allowed, problem.Advice));
        return null;
    }

    private List<PlainRow> Rows(SheetTable table, char separator)
    {
        var columns = new SheetColumns(kind, plan, new SheetSite(new YamlMap([], isFlow: true, plan.At, (0, 0))), _slips).Match(table);
        if (_slips.Stands)
            return [];
        var numbers = SheetNumbers.Find(Texts(table, columns, CellKind.Quantity), plan.Decimals, separator);
        var cells = new CellReader(plan, numbers, SheetDays.Find(Texts(table, columns, CellKind.Day), plan.Days), _slips);
        return table.Rows.Select(row => new PlainRow(row, Said(row, columns, cells))).ToList();
    }

    private static Dictionary<string, string> Said(SheetRow row, IReadOnlyList<SheetColumn> columns, CellReader cells)
    {
        var said = new Dictionary<string, string>();
        foreach (var column in columns.Where(column => column.IsTaken))
        {
            if (row.Cell(column.Index) is { Text.Length: > 0 } cell && cells.Read(cell, column, null, out _) is { } text)
                said[column.Field!.Name] = text;
        }

        return said;
    }

    private static IEnumerable<string> Texts(SheetTable table, IReadOnlyList<SheetColumn> columns, CellKind of) =>
        columns.Where(column => column.Field?.Kind == of).SelectMany(column => table.Rows.Select(row => row.Cell(column.Index)?.Text).OfType<string>());
}
