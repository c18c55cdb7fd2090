using System.Globalization;
using System.Text.RegularExpressions;

namespace Headroom.JobFiles.Sheets;

/// <summary>Sees what a spreadsheet program made of a cell that meant something else. Nothing is put right here: it is said.</summary>
internal static partial class Mangled
{
    private const string AsText = "format the column as text, then type the cell again";

    private static readonly HashSet<string> Errors =
    [
        "#REF!", "#N/A", "#NAME?", "#VALUE!", "#DIV/0!", "#NULL!", "#NUM!", "#SPILL!", "#CALC!", "#BEZUG!", "#NV", "#WERT!", "#ZAHL!", "#VALEUR!", "#NOM?",
    ];

    // Months as spreadsheet programs show them in the languages of Western Europe, from memory; one row a month.
    private static readonly string[] Months =
    [
        "jan january januar janv gen ene januari", "feb february februar févr fév fev febr februari", "mar march märz mär mrz mars mrt maart", "apr april avr abr avril",
        "may mai mei mag maj mayo", "jun june juni juin giu", "jul july juli juil lug", "aug august août aoû ago augustus",
        "sep sept september set", "oct october okt oktober out ott", "nov november", "dec december dez dezember dic déc",
    ];

    /// <summary>The finding about a cell: its code with what is allowed and what to do; null when nothing is wrong with it.</summary>
    /// <param name="text">What stands in the cell.</param>
    /// <param name="kind">How cells of its column are read.</param>
    public static (FindingCode Code, string Allowed, string Advice)? Find(string text, CellKind kind)
    {
        if (Errors.Contains(text) || (text.Length > 1 && text.All(character => character == '#')))
            return (SheetCodes.ErrorValue, "the value itself", "mend the formula or widen the column in the spreadsheet, then save the sheet again");
        if (IsFormula(text))
            return (SheetCodes.Formula, "a value; what begins with =, +, - or @ is a formula to a spreadsheet program", "write the value, with an apostrophe in front of it when it really begins so");
        if (kind is not CellKind.Text && Powers().IsMatch(text))
            return (SheetCodes.BecameNumber, "the name or number in full; its last digits are lost", AsText);
        if (kind is CellKind.Name or CellKind.Port or CellKind.Hardware && Was(text) is { } was)
            return (SheetCodes.BecameDate, "a port or name; a spreadsheet program takes 3/1 or 1-3 for a day", $"{was}; {AsText}");
        return null;
    }

    private static bool IsFormula(string text) =>
        text.Length > 1 && (text[0] is '=' or '@' || (text[0] is '+' or '-' && !char.IsAsciiDigit(text[1]) && text[1] is not (',' or '.' or '-')));

    // What was probably typed: the day and the month are the two numbers, in one order or the other.
    private static string? Was(string text)
    {
        if (Numbers().Match(text) is { Success: true } full)
            return Typed(full.Groups["a"].Value, full.Groups["b"].Value);
        var named = WithMonth().Match(text);
        var month = named.Groups["month"].Value;
        var number = Array.FindIndex(Months, names => names.Split(' ').Contains(month.ToLowerInvariant())) + 1;
        // MAR-01 is how a label looks; a spreadsheet program writes Mar-01.
        if (!named.Success || number == 0 || (!char.IsAsciiDigit(text[0]) && char.IsUpper(month[1])))
            return null;
        return Typed(named.Groups["day"].Value, number.ToString(CultureInfo.InvariantCulture));
    }

    private static string Typed(string one, string other) =>
        $"probably {one.TrimStart('0')}/{other.TrimStart('0')} or {other.TrimStart('0')}/{one.TrimStart('0')} was typed";

    [GeneratedRegex(@"^[0-9]+([.,][0-9]+)?[eE][+-][0-9]+$", RegexOptions.CultureInvariant)]
    private static partial Regex Powers();

    [GeneratedRegex(@"^((?<a>[0-9]{1,2})[./-](?<b>[0-9]{1,2})[./-](19|20)[0-9]{2}|(19|20)[0-9]{2}-(?<b>[0-9]{1,2})-(?<a>[0-9]{1,2}))( 00:00(:00)?)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Numbers();

    [GeneratedRegex(@"^((?<day>[0-9]{1,2})[-. /]+(?<month>\p{L}{3,9})\.?([-. /]+[0-9]{2,4})?|(?<month>\p{L}{3,9})\.?[- ](?<day>[0-9]{2}))$", RegexOptions.CultureInvariant)]
    private static partial Regex WithMonth();
}
