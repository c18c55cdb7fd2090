using System.Text.RegularExpressions;
using AngleSharp.Dom;

namespace Headroom.Desk.Tests;

/// <summary>What a person reads on a page.</summary>
internal static partial class Words
{
    public static string Of(IElement? element) => element is null ? "" : Spaces().Replace(string.Join(" ", element.Descendants<IText>().Select(text => text.Data)), " ").Trim();

    public static string Of(IDocument page) => Of(page.QuerySelector("main"));

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
