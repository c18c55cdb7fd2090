namespace Headroom.Engineering.Acceptance;

/// <summary>Between which ends a limit holds, as far as its name tells.</summary>
internal static class LinkKind
{
    /// <summary>True for the whole channel, cords included.</summary>
    public static bool IsChannel(string limit) => Says(limit, "channel", "ch");

    /// <summary>True for the permanent link, panel to outlet.</summary>
    public static bool IsPermanentLink(string limit) => Says(limit, "permanent", "pl");

    /// <summary>True when two names are the same but for spaces and the size of letters.</summary>
    public static bool Same(string one, string other) => string.Equals(Plain(one), Plain(other), StringComparison.OrdinalIgnoreCase);

    private static string Plain(string text) => string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static bool Says(string limit, string word, string brief) =>
        limit.Contains(word, StringComparison.OrdinalIgnoreCase) || limit.Split(' ', '(', ')', ',', '/').Contains(brief, StringComparer.OrdinalIgnoreCase);
}
