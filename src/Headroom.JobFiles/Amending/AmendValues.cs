using System.Globalization;
using Headroom.Domain.Quantities;
using Headroom.Domain.Tables;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Amending;

/// <summary>Reads the cells of one column of an edited table, and says whether they differ from what the job says.</summary>
/// <param name="column">The column as it was written.</param>
/// <param name="unit">The unit in its heading now; null for none.</param>
/// <param name="numbers">The decimal sign of texts that are numbers.</param>
/// <param name="slips">Takes the findings.</param>
internal sealed class AmendValues(BookColumn column, string? unit, SheetNumbers numbers, SheetSlips slips)
{
    // Half of the last digit that is written.
    private const double Same = 0.00006;

    /// <summary>What a job file would say; null for a cell in which nothing stands, or which was refused.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="before">What the table had there.</param>
    /// <param name="changed">True when it says something else than before.</param>
    public string? Read(BackCell cell, object? before, out bool changed)
    {
        var text = cell.Cell.Text;
        changed = text.Length == 0 ? before is not null : column.Sort == CellSort.Text ? text != (before as string)?.Trim() : true;
        if (!changed || CellReader.IsUnknown(text))
        {
            changed = before is not null && changed;
            return null;
        }

        if (column.Sort == CellSort.Text || cell.Number is null)
        {
            var kind = column.Sort == CellSort.Text ? CellKind.Name : CellKind.Quantity;
            if (Mangled.Find(text, kind) is { } slip)
                return Refuse(slip.Code, cell, (slip.Allowed, slip.Advice), out changed);
        }

        return column.Sort == CellSort.Text ? text : Number(cell, before as double?, out changed);
    }

    private string? Number(BackCell cell, double? before, out bool changed)
    {
        var (text, slip, ways) = cell.Number is not null ? (cell.Cell.Text, null, "") : numbers.Plain(cell.Cell.Text);
        if (text is null)
            return Refuse(slip!, cell, ($"a number that can be read in one way only; this may be {ways}", "write it without a sign between thousands"), out changed);
        var end = text.AsSpan().LastIndexOfAnyInRange('0', '9') + 1;
        if (!double.TryParse(text.AsSpan(0, end), NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
            return Refuse(SheetCodes.NoQuantity, cell, (column.Unit is null ? "a whole number" : "a number, with or without its unit"), out changed);
        var own = text[end..].Trim();
        if (column.Unit is null)
        {
            changed = before is not { } count || count != number;
            return own.Length == 0 && number == Math.Floor(number) ? ((long)number).ToString(CultureInfo.InvariantCulture) : Refuse(SheetCodes.NoQuantity, cell, "a whole number", out changed);
        }

        var units = column.Unit == Celsius.Units.Shown.Symbol ? Celsius.Units : Metres.Units;
        if ((own.Length > 0 ? own : unit) is not { } word)
            return Refuse(SheetCodes.NoUnit, cell, ($"a unit in the heading, like '{column.Heading}', or behind the number", "write it there"), out changed);
        if (UnitWords.Find(word, units) is not { } found)
            return Refuse(SheetCodes.NoQuantity, cell, $"{units.What} in {units.Symbols}", out changed);
        changed = before is not { } known || Math.Abs(found.ToBase(number) - known) > Same * Math.Max(1, found.Factor);
        return $"{number.ToString("0.####", CultureInfo.InvariantCulture)} {found.Symbol}";
    }

    private string? Refuse(FindingCode code, BackCell cell, string allowed, out bool changed) => Refuse(code, cell, (allowed, "correct the cell"), out changed);

    private string? Refuse(FindingCode code, BackCell cell, (string Allowed, string Advice) words, out bool changed)
    {
        changed = false;
        slips.Refuse(code, cell.Cell.At, ($"{cell.Cell.Name} holds '{Words.Short(cell.Cell.Text)}' for {column.Name}", words.Allowed, words.Advice));
        return null;
    }
}
