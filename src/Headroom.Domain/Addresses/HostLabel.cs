namespace Headroom.Domain.Addresses;

/// <summary>What may stand as the name of a device in a network.</summary>
public static class HostLabel
{
    /// <summary>The most characters of one label. Source: RFC 1035, section 2.3.4.</summary>
    public const int Most = 63;

    /// <summary>The most characters of a name with all its labels. Source: RFC 1035, section 2.3.4.</summary>
    public const int MostInAll = 253;

    /// <summary>Says what is wrong with a label: letters, digits and hyphens, no hyphen at either end, 1 to 63 characters. Source: RFC 952, RFC 1123, section 2.1.</summary>
    /// <param name="text">The label.</param>
    /// <returns>What is wrong; null when nothing.</returns>
    public static string? Wrong(string text) =>
        text.Length == 0 ? "it is empty"
        : text.Length > Most ? $"it has {text.Length} characters, and {Most} are allowed"
        : text[0] == '-' || text[^1] == '-' ? "a hyphen stands at its end or beginning"
        : text.All(c => char.IsAsciiLetterOrDigit(c) || c == '-') ? null
        : "it has other characters than letters, digits and hyphens";
}
