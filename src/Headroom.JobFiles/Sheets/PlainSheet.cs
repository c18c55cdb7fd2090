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
        return new SheetTableReader(text.Text, plan.File, _slips).Read(found.Sign, found.From, kind.MayBeEmpty) is { } table ? Rows(table, found.Sign) : [];
    }

    /// <summary>A quantity of a row in its base unit; null when nothing is said, or when a finding was made.</summary>
    public double? Quantity(PlainRow row, string field) => Measure(row, field, kind.Find(field)!.Units!)?.Value;

    /// <summary>What a field of a row says of a quantity; null when nothing is said, or when a finding was made.</summary>
    public Measurement? Measure(PlainRow row, string field, UnitTable units)
    {
        if (row.Of(field) is not { } text)
            return null;
        if (QuantityText.Measure(text, units, out var problem) is { } found)
            return found;
        _slips.Refuse(SheetCodes.NoQuantity, row.At(field), ($"row {row.Row.Number} says '{Words.Short(text)}' for {field}", problem!.Allowed, problem.Advice));
        return null;
    }

    private List<PlainRow> Rows(SheetTable table, char separator)
    {
        var columns = new SheetColumns(kind, plan, new SheetSite(new YamlMap([], isFlow: true, plan.At, (0, 0))), _slips).Match(table);
        if (_slips.Stands)
            return [];
        var numbers = SheetNumbers.Find(Texts(table, columns, CellKind.Quantity, CellKind.Measured, CellKind.Money), plan.Decimals, separator);
        var cells = new CellReader(plan, numbers, SheetDays.Find(Texts(table, columns, CellKind.Day), plan.Days), _slips);
        var unit = columns.FirstOrDefault(column => column.Field?.Kind == CellKind.Unit);
        return table.Rows.Where(row => !_slips.RefuseExtra(row, columns.Count)).Select(row => Row(row, (columns, unit), cells)).ToList();
    }

    // A column of units tells that of amounts and of values whose quantity another column tells; where heading or cell say one, it is that.
    private static PlainRow Row(SheetRow row, (IReadOnlyList<SheetColumn> All, SheetColumn? Unit) columns, CellReader cells)
    {
        var (said, there) = (new Dictionary<string, string>(), new Dictionary<string, SheetCell>());
        var told = columns.Unit is null ? null : row.Cell(columns.Unit.Index)?.Text;
        foreach (var column in columns.All.Where(column => column.IsTaken))
        {
            if (row.Cell(column.Index) is not { Text.Length: > 0 } cell)
                continue;
            there[column.Field!.Name] = cell;
            var unit = column.Unit is null && column.Field.Kind is CellKind.Money or CellKind.Measured && told is { Length: > 0 } ? told : null;
            if (cells.Read(cell, column, unit, out _) is { } text)
                said[column.Field.Name] = text;
        }

        return new(row, said, there);
    }

    private static IEnumerable<string> Texts(SheetTable table, IReadOnlyList<SheetColumn> columns, params CellKind[] of) =>
        columns.Where(column => column.Field is { } field && of.Contains(field.Kind)).SelectMany(column => table.Rows.Select(row => row.Cell(column.Index)?.Text).OfType<string>());
}
