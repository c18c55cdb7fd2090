namespace Headroom.Cli.Commands;

/// <summary>Two words with a sign of equality between them, as options and records take them: <c>from=cupboard</c>.</summary>
internal static class PairOption
{
    /// <summary>An option that may be given several times, each time with two words.</summary>
    public static ValueOption Of(string name, string value, string about) =>
        new ValueOption(name, value, about, often: true).Checked(given => Read(given) is null ? $"is written as {value}, not '{given}'" : null);

    /// <summary>The two words; null when there is no sign between them, or nothing on one side.</summary>
    public static KeyValuePair<string, string>? Read(string given)
    {
        var at = given.IndexOf('=', StringComparison.Ordinal);
        var (left, right) = at < 0 ? ("", "") : (given[..at].Trim(), given[(at + 1)..].Trim());
        return left.Length > 0 && right.Length > 0 ? KeyValuePair.Create(left, right) : null;
    }

    /// <summary>All pairs of words that were checked before.</summary>
    public static IReadOnlyList<KeyValuePair<string, string>> All(IEnumerable<string> given) => [.. given.Select(word => Read(word)!.Value)];
}
