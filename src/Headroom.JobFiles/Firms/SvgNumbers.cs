using System.Globalization;
using System.Text.RegularExpressions;

namespace Headroom.JobFiles.Firms;

/// <summary>The numbers of an SVG attribute, which may stand without anything between them.</summary>
internal static partial class SvgNumbers
{
    /// <summary>All numbers of a text, in order.</summary>
    public static IEnumerable<double> All(string text) => Number().Matches(text).Select(found => double.Parse(found.ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture));

    /// <summary>One number, as SVG writes it.</summary>
    [GeneratedRegex(@"[-+]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][-+]?[0-9]{1,2})?")]
    public static partial Regex Number();
}
