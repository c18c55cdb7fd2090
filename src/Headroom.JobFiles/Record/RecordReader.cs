using System.Globalization;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Record;

/// <summary>Reads one sheet of a firm's record, and says at the cell what is wrong with it.</summary>
internal sealed class RecordReader
{
    private readonly PlainSheet _sheet;
    private readonly DateOnly _on;

    /// <summary>A reader of one sheet.</summary>
    public RecordReader(RecordSheet sheet, string path, RecordPlan plan)
    {
        _on = plan.On;
        var own = plan.Columns.Where(pair => pair.Key.StartsWith(sheet.File + "/", StringComparison.OrdinalIgnoreCase)).Select(pair => KeyValuePair.Create(pair.Key[(sheet.File.Length + 1)..], pair.Value));
        _sheet = new PlainSheet(sheet.Kind, new SheetPlan(path, sheet.File, new Place("what was typed", 0, 0)) { Columns = [.. own], Decimals = plan.Decimals, Days = plan.Days });
    }

    /// <summary>What is wrong.</summary>
    public SheetSlips Slips => _sheet.Slips;

    /// <summary>The rows.</summary>
    public IReadOnlyList<PlainRow> Rows() => _sheet.Read();

    /// <summary>True when each of some fields says something; otherwise it is refused.</summary>
    public bool Has(PlainRow row, params string[] fields)
    {
        var lacking = fields.Where(field => row.Of(field) is null).ToList();
        if (lacking.Count == 0)
            return true;
        // What was refused already is not refused again for being absent.
        if (lacking.Exists(field => !row.Cells.ContainsKey(field) || CellReader.IsUnknown(row.Cells[field].Text)))
            Slips.Refuse(SheetCodes.NoKey, row.Row.At, ($"row {row.Row.Number} says no {Words.Or(lacking)}", $"{string.Join(", ", fields)} in every row", "write what is missing, or take the row out"));
        return false;
    }

    /// <summary>A day, not after that of the study; null when nothing is said, or it was refused.</summary>
    public DateOnly? Day(PlainRow row, string field)
    {
        if (row.Of(field) is not { } text)
            return null;
        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            Refuse(RecordCodes.NoDay, row, field, ("a day that exists, like 2024-08-02", "look it up, and write it as year-month-day"));
            return null;
        }

        if (day <= _on)
            return day;
        Refuse(RecordCodes.WrongOrder, row, field, ($"a day not after {Written(_on)}, the day of the study", "is the year right? or give a later day with --on"));
        return null;
    }

    /// <summary>A whole number; null when nothing is said, or it was refused.</summary>
    public int? Count(PlainRow row, string field, (int Least, int Most) bounds)
    {
        if (row.Of(field) is not { } text)
            return null;
        if (!int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var count))
            Refuse(RecordCodes.NoWord, row, field, ($"a whole number between {bounds.Least} and {bounds.Most}", "write it in digits, without a unit"));
        else if (count < bounds.Least || count > bounds.Most)
            Refuse(RecordCodes.OutOfRange, row, field, ($"a whole number between {bounds.Least} and {bounds.Most}", "correct it, or leave it empty when it is not known"));
        else
            return count;
        return null;
    }

    /// <summary>A quantity within its range, in its base unit; null when nothing is said, or it was refused.</summary>
    public Measurement? Quantity(PlainRow row, string field, (UnitTable Units, Bounds Bounds, string Shown) of)
    {
        if (_sheet.Measure(row, field, of.Units) is not { } found)
            return null;
        if (of.Bounds.Contains(found.Value))
            return found;
        Refuse(RecordCodes.OutOfRange, row, field, (of.Bounds.InWords(of.Units.Find(of.Shown)!), "correct it, or leave it empty when it is not known"));
        return null;
    }

    /// <summary>A measured value of whichever units; null when nothing is said, or it was refused.</summary>
    public Measurement? Measured(PlainRow row, string field, UnitTable units) => _sheet.Measure(row, field, units);

    /// <summary>Hours of work; null when nothing is said, or it was refused.</summary>
    public decimal? Hours(PlainRow row, string field) =>
        Quantity(row, field, RecordBounds.Work) is { } found ? (decimal)found.Value / 3600 : null;

    /// <summary>An amount; null when nothing is said, or it was refused.</summary>
    public Money? Amount(PlainRow row, string field)
    {
        if (row.Of(field) is not { } text)
            return null;
        if (MoneyShape.Plain(text) is not { } money)
            Refuse(text.Contains('-', StringComparison.Ordinal) ? RecordCodes.OutOfRange : RecordCodes.NoWord, row, field, ("an amount between 0 and 1000000 with the three letters of its currency", "write it like 2150 EUR, or the currency into the heading"));
        else if (money.Amount > MoneyShape.Most)
            Refuse(RecordCodes.OutOfRange, row, field, ("an amount between 0 and 1000000", "correct it, or leave it empty when it is not known"));
        else
            return money;
        return null;
    }

    /// <summary>Yes or no; null when nothing is said, or it was refused.</summary>
    public bool? YesNo(PlainRow row, string field)
    {
        switch (row.Of(field)?.ToLowerInvariant())
        {
            case null:
                return null;
            case "yes" or "y" or "ja" or "oui" or "x" or "true":
                return true;
            case "no" or "n" or "nein" or "non" or "false":
                return false;
            default:
                Refuse(RecordCodes.NoWord, row, field, ("yes or no", "choose one of them, or leave it empty when it is not known"));
                return null;
        }
    }

    /// <summary>Refuses what a cell says.</summary>
    public void Refuse(FindingCode code, PlainRow row, string field, (string Allowed, string Advice) words) => Slips.Refuse(
        code, row.At(field), ($"{(row.Cells.TryGetValue(field, out var cell) ? $"{cell.Name} says '{Words.Short(cell.Text)}' for {field}" : $"row {row.Row.Number} says no {field}")}", words.Allowed, words.Advice));

    /// <summary>A day as it is written.</summary>
    public static string Written(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
