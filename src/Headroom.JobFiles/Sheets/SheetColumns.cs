using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Sheets;

/// <summary>Finds what each column of a sheet becomes.</summary>
internal sealed class SheetColumns(SheetKind kind, SheetPlan plan, SheetSite site, SheetSlips slips)
{
    private const string None = "none";
    private readonly Dictionary<SheetField, SheetColumn> _taken = [];

    /// <summary>The columns in the order of the sheet.</summary>
    public IReadOnlyList<SheetColumn> Match(SheetTable table)
    {
        CheckList(table.Header);
        var columns = new List<SheetColumn>();
        foreach (var heading in table.Header)
            columns.Add(Column(heading, columns.Count, table));
        CheckNeeds(table, columns);
        return columns;
    }

    private SheetColumn Column(SheetCell heading, int index, SheetTable table)
    {
        var column = Said(plan, heading) is { } said ? Stated(heading, index, said) : Usual(heading, index);
        if (column.Field is not { } field)
        {
            if (Said(plan, heading) is null)
                AskUnknown(column, table);
            return column;
        }

        if (field.Kind == CellKind.Aside)
            return column;
        if (_taken.TryAdd(field, column))
            return column;
        slips.Refuse(SheetCodes.ColumnTwice, heading.At, ($"{column.Called} and {_taken[field].Called} are both taken for '{field.Name}'", "one column for each field", $"set one aside: columns: {{{heading.Text}: none}}"));
        return column with { Field = null };
    }

    /// <summary>What the person's list says of a heading; null when nothing.</summary>
    public static string? Said(SheetPlan plan, SheetCell heading) => plan.Columns.Where(pair => Same(pair.Key, heading.Text)).Select(pair => pair.Value).FirstOrDefault();

    private SheetColumn Stated(SheetCell heading, int index, string said)
    {
        var words = SheetHeading.Of(said);
        return new(index, heading, words.Plain == None ? null : kind.Find(words.Plain), words.Unit ?? SheetHeading.Of(heading.Text).Unit);
    }

    private SheetColumn Usual(SheetCell heading, int index)
    {
        var words = SheetHeading.Of(heading.Text);
        foreach (var field in kind.Fields)
        {
            if (words.Fit(field) is (true, var unit))
                return new(index, heading, field, unit);
        }

        return new(index, heading, null, null);
    }

    private void AskUnknown(SheetColumn column, SheetTable table)
    {
        var words = SheetHeading.Of(column.Heading.Text).Plain;
        if (words.Length == 0 && !table.Rows.Any(row => row.Cell(column.Index) is { Text.Length: > 0 }))
            return;
        var known = kind.Fields.Where(field => field.Kind != CellKind.Aside).SelectMany(field => field.Words.Append(field.Name));
        var near = words.Length == 0 ? null : Spelling.Nearest(words, known);
        var meant = near is null ? null : kind.Fields.First(field => field.Name == near || field.Words.Contains(near)).Name;
        slips.Ask(
            SheetCodes.UnknownColumn,
            column.Heading.At,
            ($"{column.Called} is taken for nothing", $"a heading for {Fields()}", meant is null ? $"say what it is, or set it aside: columns: {{{Key(column)}: none}}" : $"probably it is {meant}: columns: {{{Key(column)}: {meant}}}"));
    }

    // What the person's list says must be there: a heading that is not is a slip of the pen, here or there.
    private void CheckList(IReadOnlyList<SheetCell> header)
    {
        foreach (var (heading, field) in plan.Columns)
        {
            if (!header.Any(cell => Same(heading, cell.Text)))
                RefuseHeading(heading, header);
            RefuseField(SheetHeading.Of(field).Plain);
        }

        foreach (var (field, _) in plan.Otherwise)
            RefuseField(field);
    }

    private void RefuseHeading(string heading, IReadOnlyList<SheetCell> header) => slips.Refuse(
        SheetCodes.Mapping,
        plan.At,
        ($"the list of columns names '{Words.Short(heading)}'", $"a heading of {plan.File}: {string.Join(", ", header.Select(cell => Words.Short(cell.Text)).Take(12))}", Spelling.Nearest(heading, header.Select(cell => cell.Text)) is { } near ? $"did you mean '{near}'?" : "write it as it stands in the sheet"));

    private void RefuseField(string field)
    {
        if (field == None || kind.Find(field) is not null)
            return;
        slips.Refuse(SheetCodes.Mapping, plan.At, ($"the field '{Words.Short(field)}'", Fields(), Spelling.Nearest(field, kind.Fields.Select(known => known.Name)) is { } near ? $"did you mean '{near}'?" : "choose one of them"));
    }

    private void CheckNeeds(SheetTable table, List<SheetColumn> columns)
    {
        foreach (var group in kind.Needs.Where(group => !group.Any(Has)))
        {
            var free = columns.Where(column => column.Field is null && column.Heading.Text.Length > 0).ToList();
            var advice = group[0] == "from" ? Start() : free.Count > 0 ? $"say which column it is: columns: {{{Key(free[0])}: {group[0]}}}" : "see whether it is the right sheet, and what stands between its cells";
            slips.Refuse(SheetCodes.NoColumn, table.Header[0].At, ($"no column of {columns.Count} is headed as '{Words.Or(group)}'", $"a sheet of {kind.Name} has one", advice));
        }

        bool Has(string name) => _taken.Keys.Any(field => field.Name == name) || plan.Otherwise.Any(pair => pair.Key == name);
    }

    private string Start() => site.UsualStart is { } usual
        ? $"probably they start in {usual}: otherwise: {{from: {usual}}}"
        : "say where they start: otherwise: {from: cupboard}";

    private string Fields() => Words.Or([.. kind.Fields.Where(field => field.Kind != CellKind.Aside).Select(field => field.Name)]);

    private static string Key(SheetColumn column) => column.Heading.Text.Length > 0 ? Words.Short(column.Heading.Text) : "(heading)";

    private static bool Same(string one, string other) => SheetHeading.PlainOf(one) == SheetHeading.PlainOf(other);
}
