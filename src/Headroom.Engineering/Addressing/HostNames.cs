using System.Globalization;

namespace Headroom.Engineering.Addressing;

/// <summary>Makes host names from the firm's own pattern.</summary>
/// <param name="pattern">The pattern, such as <c>{role}-{place}-{number}</c>.</param>
public sealed class HostNames(string pattern)
{
    private static readonly Dictionary<string, string> Roles = new()
    {
        ["phone"] = "tel", ["access point"] = "ap", ["camera"] = "cam", ["door station"] = "door", ["radio"] = "link", ["switch"] = "sw", ["other"] = "dev", ["injector"] = "inj", ["standby supply"] = "ups",
    };

    private readonly Dictionary<(string Role, string Place), int> _counted = [];

    /// <summary>The short word for a kind of device.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="id">The device's id.</param>
    /// <returns>The word.</returns>
    /// <remarks>What is of no kind of its own, such as a till, is called by the letters of its id.</remarks>
    public static string RoleOf(string kind, string id) => kind == "other" && Label(id.AsSpan().TrimEnd("0123456789").TrimEnd("-. ").ToString()) is { Length: > 0 } own ? own : Roles.GetValueOrDefault(kind, kind);

    /// <summary>The name of a device. The number is the one at the end of its id, else the next of its role and place.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="place">The space it is in; null when not known.</param>
    /// <returns>The name in small letters.</returns>
    public string Of(string id, string kind, string? place)
    {
        var role = RoleOf(kind, id);
        var where = Label(place ?? "x");
        var next = _counted[(role, where)] = _counted.GetValueOrDefault((role, where)) + 1;
        var number = NumberOf(id) ?? next;
        return pattern.Replace("{role}", role, StringComparison.Ordinal)
            .Replace("{place}", where, StringComparison.Ordinal)
            .Replace("{number}", number.ToString("00", CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{id}", Label(id), StringComparison.Ordinal)
            .ToLowerInvariant();
    }

    // Spaces and points, which people say, become hyphens; letters that no host name has stay, and are told.
    private static string Label(string text) => text.Replace(' ', '-').Replace('.', '-').Replace('_', '-').ToLowerInvariant();

    private static int? NumberOf(string id)
    {
        var from = id.AsSpan().LastIndexOfAnyExceptInRange('0', '9') + 1;
        return from < id.Length && int.TryParse(id.AsSpan(from), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
