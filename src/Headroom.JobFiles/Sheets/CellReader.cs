using Headroom.Domain.Quantities;
using Headroom.JobFiles.Jobs;

namespace Headroom.JobFiles.Sheets;

/// <summary>Writes what a cell says as a job file would have it. What cannot be taken for certain is refused, never guessed.</summary>
internal sealed class CellReader(SheetPlan plan, SheetNumbers numbers, SheetDays days, SheetSlips slips)
{
    private static readonly HashSet<string> Unknown = new(StringComparer.OrdinalIgnoreCase)
    {
        "", "?", "??", "-", "--", "–", "—", "unknown", "n/a", "na", "n.a.", "tbd", "tba", "tbc", "unbekannt", "k.a.", "inconnu", "onbekend", "desconocido", "sconosciuto",
    };

    // The words that people have for what can be measured, besides those of the job file; from memory.
    private static readonly Dictionary<string, string> Quantities = new(StringComparer.OrdinalIgnoreCase)
    {
        ["power"] = "watts", ["leistung"] = "watts", ["w"] = "watts", ["watt"] = "watts", ["voltage"] = "volts", ["spannung"] = "volts", ["v"] = "volts",
        ["current"] = "amperes", ["strom"] = "amperes", ["a"] = "amperes", ["resistance"] = "ohms", ["widerstand"] = "ohms", ["noise"] = "sound", ["schall"] = "sound",
        ["sound level"] = "sound", ["temp"] = "temperature", ["temperatur"] = "temperature", ["runtime"] = "minutes", ["laufzeit"] = "minutes",
        ["dämpfung"] = "loss", ["länge"] = "length", ["link speed"] = "speed",
    };

    private readonly HashSet<int> _withoutUnit = [];

    /// <summary>True when a text says that nobody knows.</summary>
    public static bool IsUnknown(string text) => Unknown.Contains(text);

    /// <summary>What the cell says; null when nobody knows it, or when it was refused.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="column">Its column.</param>
    /// <param name="unit">The unit that another column gives its number; null when none does.</param>
    /// <param name="refused">True when a finding was made.</param>
    public string? Read(SheetCell cell, SheetColumn column, string? unit, out bool refused)
    {
        refused = false;
        if (IsUnknown(cell.Text))
            return null;
        var field = column.Field!;
        if (field.Kind == CellKind.Name && plan.Names.Where(pair => pair.Key == cell.Text).Select(pair => pair.Value).FirstOrDefault() is { } ours)
            return ours;
        var read = Mangled.Find(cell.Text, field.Kind) is { } slip
            ? Refuse(slip.Code, cell, column, (slip.Allowed, slip.Advice))
            : Plain(cell, column, unit);
        refused = read is null;
        return read;
    }

    private string? Plain(SheetCell cell, SheetColumn column, string? unit) => column.Field!.Kind switch
    {
        CellKind.Name when column.Field.Name == "what" => Quantities.GetValueOrDefault(cell.Text, cell.Text.ToLowerInvariant()),
        CellKind.Name => RangeSigns(cell.Text),
        CellKind.Quantity or CellKind.Measured => Number(cell, column, unit ?? column.Unit),
        CellKind.Money => Money(cell, column, unit ?? column.Unit),
        CellKind.Day => Day(cell, column),
        CellKind.Hardware => Hardware(cell, column),
        _ => cell.Text,
    };

    // K-01 to K-12, with whichever dash or dots.
    private static string RangeSigns(string text) => text
        .Replace("…", "..", StringComparison.Ordinal).Replace("...", "..", StringComparison.Ordinal)
        .Replace("–", "..", StringComparison.Ordinal).Replace(" to ", "..", StringComparison.Ordinal).Replace(" bis ", "..", StringComparison.Ordinal);

    private string? Number(SheetCell cell, SheetColumn column, string? unit)
    {
        var (text, slip, ways) = numbers.Plain(cell.Text);
        if (text is null)
            return RefuseNumber(slip!, cell, column, ways);
        var units = column.Field!.Units ?? ReadingKinds.Any;
        var end = text.AsSpan().LastIndexOfAnyInRange('0', '9') + 1;
        var own = WithoutOrigin(text[end..].Trim());
        if (end == 0)
            return text;
        if (own.Length == 0)
            return unit is null ? NoUnit(cell, column, text) : $"{text[..end]} {Symbol(unit, units)}{text[end..]}";
        return UnitWords.Find(own, units) is { } known ? $"{text[..end]} {known.Symbol}{text[end..].TrimStart()[own.Length..]}" : text;
    }

    private static string WithoutOrigin(string unit)
    {
        var rest = (" " + unit).AsSpan();
        QuantityText.TakeOrigin(ref rest);
        return rest.Trim().ToString();
    }

    private static string Symbol(string unit, UnitTable units) => UnitWords.Find(unit, units)?.Symbol ?? unit;

    // Said once for the whole column: who forgot the unit forgot it in every row.
    private string? NoUnit(SheetCell cell, SheetColumn column, string text)
    {
        if (_withoutUnit.Add(column.Index))
        {
            slips.Refuse(
                SheetCodes.NoUnit,
                cell.At,
                ($"{column.Called} has numbers without a unit, from {cell.Name} '{Words.Short(text)}' on", $"a unit in the heading, in the cell, or in a column 'unit'", $"write it in the heading, like '{Words.Short(column.Heading.Text)} ({Usual(column.Field!)})', or in the list: columns: {{{Words.Short(column.Heading.Text)}: {column.Field!.Name} ({Usual(column.Field)})}}"));
        }

        return null;
    }

    private static string Usual(SheetField field) => field.Units?.Shown.Symbol ?? (field.Kind == CellKind.Money ? "EUR" : "W");

    private string? Money(SheetCell cell, SheetColumn column, string? currency)
    {
        var (text, slip, ways) = numbers.Plain(cell.Text);
        if (text is null)
            return RefuseNumber(slip!, cell, column, ways);
        var amount = new string([.. text.Where(character => char.IsAsciiDigit(character) || character == '.')]);
        if (amount.Length == 0)
            return text;
        var sign = text.Replace(amount, "", StringComparison.Ordinal).Trim();
        if (sign.Length == 0)
            return currency is null ? NoUnit(cell, column, text) : $"{amount} {UnitWords.Currency(currency) ?? currency}";
        return UnitWords.Currency(sign) is { } known ? $"{amount} {known}" : text;
    }

    private string? Day(SheetCell cell, SheetColumn column)
    {
        var (text, slip, ways) = days.Plain(cell.Text);
        if (text is not null)
            return text;
        return slip == SheetCodes.DayCount
            ? Refuse(slip, cell, column, ("a day", $"probably it is {ways}; format the column as a day, then save the sheet again"))
            : Refuse(slip!, cell, column, ("a day in one order all down the column, with a year of four digits", $"{ways}: say the order, 'days: day-month-year' in the job or --days day-month-year, or write it as 2026-11-14"));
    }

    private string? Hardware(SheetCell cell, SheetColumn column)
    {
        if (HardwareAddress.Plain(cell.Text) is { } address)
            return address;
        return HardwareAddress.LacksZero(cell.Text)
            ? Refuse(SheetCodes.LostZero, cell, column, ("twelve digits", $"probably it is {HardwareAddress.WithZeros(cell.Text)}: zeros in front of it were lost; format the column as text, then type it again"))
            : Refuse(SheetCodes.NoAddress, cell, column, ("six pairs of hexadecimal digits, with colons, hyphens, points or nothing between them", "read it from the label again, or leave it out when it is not known"));
    }

    private string? RefuseNumber(FindingCode slip, SheetCell cell, SheetColumn column, string ways) => slip == SheetCodes.MixedDecimals
        ? Refuse(slip, cell, column, ($"the decimal sign of the other numbers, which is a {numbers.Word}", $"write it with a {numbers.Word}"))
        : Refuse(slip, cell, column, ("a number that can be read in one way", $"it may be {ways}: say which sign is the decimal one, 'decimals: {SheetNumbers.Comma}' in the job or --decimals {SheetNumbers.Comma}, or write it without a mark between thousands"));

    private string? Refuse(FindingCode code, SheetCell cell, SheetColumn column, (string Allowed, string Advice) words)
    {
        slips.Refuse(code, cell.At, ($"{cell.Name} '{Words.Short(cell.Text)}' in {column.Called}", words.Allowed, words.Advice));
        return null;
    }
}
