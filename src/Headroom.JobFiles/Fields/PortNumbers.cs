using System.Globalization;

namespace Headroom.JobFiles.Fields;

/// <summary>The numbers printed on ports: <c>5</c>, <c>5..16</c>.</summary>
internal static class PortNumbers
{
    /// <summary>The highest number on a port.</summary>
    public const int Most = 512;

    /// <summary>Reads a number or a range; null when it is none.</summary>
    public static PortRange? Read(string text)
    {
        var ends = text.Split("..", StringSplitOptions.TrimEntries);
        if (ends.Length > 2 || Number(ends[0]) is not { } first || Number(ends[^1]) is not { } last || last < first)
            return null;
        return new PortRange(first, last);
    }

    private static int? Number(string digits) =>
        int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= Most ? number : null;
}
