using System.Globalization;

namespace Headroom.JobFiles.Sheets;

/// <summary>Knows in which order a sheet writes its days, and writes them year first.</summary>
internal sealed class SheetDays
{
    private const string DayFirst = "day-month-year";
    private const string MonthFirst = "month-day-year";
    private const string YearFirst = "year-month-day";

    // A day kept as a count from 1899-12-30, as spreadsheet programs have it; here from 1982 to 2064.
    private const int LeastCount = 30_000;
    private const int MostCount = 60_000;

    private readonly string? _stated;
    private readonly string? _found;

    private SheetDays(string? stated, string? found) => (_stated, _found) = (stated, found);

    /// <summary>The orders by their words.</summary>
    public static IReadOnlyList<string> Orders { get; } = [DayFirst, MonthFirst, YearFirst];

    /// <summary>The order of days that do not begin with the year; null when there are none or nothing tells it.</summary>
    public string? Order => _stated ?? _found;

    /// <summary>Finds the order by the days that can be read in one way only.</summary>
    public static SheetDays Find(IEnumerable<string> cells, string? stated)
    {
        string? found = null;
        foreach (var cell in stated is null ? cells : [])
        {
            if (Parts(cell) is not { } parts || parts.First > 31)
                continue;
            var order = parts.First > 12 || parts.Sign == '.' ? DayFirst : parts.Second > 12 ? MonthFirst : null;
            if (order is not null && found is not null && order != found)
                return new(null, null);
            found ??= order;
        }

        return new(stated, found);
    }

    /// <summary>The day, year first; or the code of what is wrong with it, with what it could be.</summary>
    public (string? Text, FindingCode? Slip, string Ways) Plain(string text)
    {
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is > LeastCount and < MostCount)
            return (null, SheetCodes.DayCount, Written(new DateOnly(1899, 12, 30).AddDays(count)));
        var day = WithoutTime(text);
        if (Parts(day) is not { } parts)
            return (Named(day) ?? day, null, "");
        if (parts.First > 31 || _stated == YearFirst)
            return (Day(parts.First, parts.Second, parts.Third) ?? day, null, "");
        if (parts.Third < 100)
            return (null, SheetCodes.AmbiguousDay, "a year of two digits");
        return Order switch
        {
            MonthFirst => (Day(parts.Third, parts.First, parts.Second) ?? day, null, ""),
            DayFirst => (Day(parts.Third, parts.Second, parts.First) ?? day, null, ""),
            _ => (null, SheetCodes.AmbiguousDay, $"{Day(parts.Third, parts.Second, parts.First)} or {Day(parts.Third, parts.First, parts.Second)}"),
        };
    }

    // A clock time behind the day is passed over: a reading keeps its day.
    private static string WithoutTime(string text)
    {
        var space = text.IndexOfAny([' ', 'T']);
        return space > 0 && TimeOnly.TryParse(text[(space + 1)..], CultureInfo.InvariantCulture, out _) ? text[..space] : text;
    }

    private static (int First, int Second, int Third, char Sign)? Parts(string text)
    {
        var sign = text.IndexOfAny(['.', '/', '-']) is >= 0 and var at ? text[at] : ' ';
        var parts = text.Split(sign, StringSplitOptions.TrimEntries);
        return parts.Length == 3 && Number(parts[0]) is { } first && Number(parts[1]) is { } second && Number(parts[2]) is { } third ? (first, second, third, sign) : null;
    }

    private static int? Number(string text) =>
        text.Length <= 4 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static string? Named(string text) =>
        DateOnly.TryParseExact(text, ["d MMM yyyy", "d MMMM yyyy", "d-MMM-yyyy", "MMM d, yyyy", "MMMM d, yyyy"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? Written(day) : null;

    private static string? Day(int year, int month, int day) =>
        year is >= 1 and <= 9999 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month) ? Written(new DateOnly(year, month, day)) : null;

    private static string Written(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
