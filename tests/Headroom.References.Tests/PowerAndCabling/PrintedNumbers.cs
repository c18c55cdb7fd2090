using System.Globalization;
using System.Text.RegularExpressions;

namespace Headroom.References.Tests.PowerAndCabling;

/// <summary>The numbers in the words of a printed row, in their order.</summary>
internal static partial class PrintedNumbers
{
    internal static double[] In(string text) => [.. Number().Matches(text).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"\d+([.]\d+)?")]
    private static partial Regex Number();
}
