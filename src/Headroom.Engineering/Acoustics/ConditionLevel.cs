using System.Globalization;

namespace Headroom.Engineering.Acoustics;

/// <summary>Reads the fan level out of the conditions of a reading: <c>sw-1 level 2</c>, or <c>level 2</c> where there is one switch.</summary>
internal static class ConditionLevel
{
    private const string Word = "level ";

    /// <summary>The level of a source under the conditions; null when they do not say.</summary>
    /// <param name="condition">The conditions in words; null when not written.</param>
    /// <param name="id">The source.</param>
    /// <param name="only">True when it is the only one that has levels, or the one the reading was taken at.</param>
    public static int? Of(string? condition, string id, bool only)
    {
        if (condition is null)
            return null;
        var own = condition.IndexOf(id + " " + Word, StringComparison.OrdinalIgnoreCase);
        var at = own >= 0 ? own + id.Length + 1 : only ? condition.IndexOf(Word, StringComparison.OrdinalIgnoreCase) : -1;
        if (at < 0)
            return null;
        var rest = condition.AsSpan(at + Word.Length);
        var end = 0;
        while (end < rest.Length && char.IsAsciiDigit(rest[end]))
            end++;
        return int.TryParse(rest[..end], NumberStyles.None, CultureInfo.InvariantCulture, out var level) ? level : null;
    }
}
