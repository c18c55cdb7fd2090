using Headroom.Domain.Findings;
using Headroom.JobFiles.Files;

namespace Headroom.JobFiles.Sheets;

/// <summary>Reads a sheet as people keep it.</summary>
internal sealed class SheetReader(SheetPlan plan, SheetSite site)
{
    private readonly SheetSlips _slips = new();
    private readonly List<KeyValuePair<string, string>> _facts = [];

    /// <summary>Reads the file of a plan; it is never changed.</summary>
    public static SheetRead Read(SheetPlan plan, SheetSite site) => new SheetReader(plan, site).ReadText(TextFile.ReadAs(plan.File, bytes => SheetEncoding.Decode(bytes.Span, plan.File, plan.Encoding)));

    /// <summary>Reads bytes in place of the file.</summary>
    public static SheetRead Parse(SheetPlan plan, SheetSite site, ReadOnlySpan<byte> bytes) => new SheetReader(plan, site).ReadText(SheetEncoding.Decode(bytes, plan.File, plan.Encoding));

    private SheetRead ReadText(Loaded<SheetText> loaded)
    {
        _slips.Take(loaded.Findings);
        if (loaded.Value is not { } text)
            return Result([], []);
        if (string.IsNullOrWhiteSpace(text.Text))
        {
            _slips.Refuse(FileCodes.Empty, new Place(plan.File, 0, 0), ("an empty file", "a line with headings, and rows below it", "see whether it is the right file"));
            return Result([], []);
        }

        CheckText(text);
        var separator = FindSeparator(text.Text);
        return new SheetTableReader(text.Text, plan.File, _slips).Read(separator.Sign, separator.From) is { } table
            ? ReadTable(table, separator.Sign)
            : Result([], []);
    }

    private void CheckText(SheetText text)
    {
        var ends = text.Text.Contains("\r\n", StringComparison.Ordinal) ? "lines end as on Windows" : "";
        _facts.Add(new("encoding", string.Join(", ", new[] { text.Encoding, text.HasMark ? "with a byte order mark" : "", ends }.Where(part => part.Length > 0))));
        var place = new Place(plan.File, 1, 1);
        _slips.Take(TextGuard.Characters(text.Text, place));
        if (text.OddByte is { } at && plan.Encoding is null)
            _slips.Ask(SheetCodes.Encoding, new LineWalk(text.Text, place).To(at), ($"the sheet is not in UTF-8; as {text.Encoding} this is '{text.Text[at]}'", "UTF-8, UTF-16 or Windows-1252", $"see whether that is right, and say so: encoding: {SheetEncoding.Windows}; or save the sheet again as CSV in UTF-8"));
    }

    private (char Sign, int From) FindSeparator(string text)
    {
        var stated = SheetSeparator.Words.Where(known => known.Word == plan.Separator).Select(known => (char?)known.Sign).FirstOrDefault();
        var found = SheetSeparator.Find(text, stated);
        if (found.Rival is { } rival)
            _slips.Refuse(SheetCodes.Separator, new Place(plan.File, 1, 1), SheetSeparator.Unclear(found.Sign, rival));
        _facts.Add(new("separator", $"{SheetSeparator.Word(found.Sign)}, {found.Why}"));
        return (found.Sign, found.From);
    }

    private SheetRead ReadTable(SheetTable table, char separator)
    {
        var kind = SheetKinds.Find(plan.Kind)!;
        var columns = new SheetColumns(kind, plan, site, _slips).Match(table);
        var numbers = SheetNumbers.Find(Texts(table, columns, CellKind.Quantity, CellKind.Measured, CellKind.Money), plan.Decimals, separator);
        var days = SheetDays.Find(Texts(table, columns, CellKind.Day), plan.Days);
        _facts.Add(new("decimal sign", $"{numbers.Word}, {numbers.Why}"));
        if (days.Order is { } order)
            _facts.Add(new("days", order));
        var rows = new SheetRows(kind, plan, new CellReader(plan, numbers, days, _slips), _slips);
        // Without a column that it needs nothing of the sheet is taken; what is wrong with its cells is said all the same.
        var lacks = _slips.Findings.Any(finding => finding.Code == SheetCodes.NoColumn.Code);
        if (columns.Any(column => column.IsTaken))
            rows.Read(table, columns);
        SheetReferences.Check(kind, rows.Entries, site, (_slips, rows.LeftRows));
        return Result(columns, lacks ? [] : rows.Entries) with { Rows = (table.Rows.Count, lacks ? table.Rows.Count : rows.Left, lacks ? 0 : rows.PassedOver), Tallies = rows.Tallies, LeftRows = lacks ? LeftRows.AnyRow : rows.LeftRows };
    }

    private static IEnumerable<string> Texts(SheetTable table, IReadOnlyList<SheetColumn> columns, params CellKind[] kinds) =>
        columns.Where(column => column.Field is { } field && kinds.Contains(field.Kind))
            .SelectMany(column => table.Rows.Select(row => row.Cell(column.Index)?.Text).OfType<string>());

    private SheetRead Result(IReadOnlyList<SheetColumn> columns, IReadOnlyList<Yaml.YamlEntry> entries) =>
        new(plan, _facts, columns, entries, _slips.Findings);
}
