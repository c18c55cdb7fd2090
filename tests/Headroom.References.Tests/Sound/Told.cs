using System.Globalization;
using System.Text.RegularExpressions;

namespace Headroom.References.Tests.Sound;

/// <summary>Reads the numbers and the question out of what a row is of.</summary>
internal static partial class Told
{
    /// <summary>The numbers in a text, in order; a hyphen before a digit is a sign.</summary>
    internal static double[] Numbers(string text) =>
        [.. Number().Matches(text).Select(found => double.Parse(found.Value, CultureInfo.InvariantCulture))];

    /// <summary>What stands before the last colon, and what is asked behind it.</summary>
    internal static (string Given, string Asked) Split(string what)
    {
        var colon = what.LastIndexOf(": ", StringComparison.Ordinal);
        return colon < 0 ? (what, "") : (what[..colon], what[(colon + 2)..]);
    }

    [GeneratedRegex(@"(?<![\w.])-?\d+(\.\d+)?")]
    private static partial Regex Number();
}
