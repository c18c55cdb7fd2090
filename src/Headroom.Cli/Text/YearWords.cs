using System.Globalization;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Years;

namespace Headroom.Cli.Text;

/// <summary>What becomes of a site over the years, in words that sheet and CSV share.</summary>
internal static class YearWords
{
    private static readonly (Change Change, string Word)[] Causes =
        [(Change.Devices, "devices added"), (Change.Batteries, "batteries age"), (Change.Dust, "dust in fans"), (Change.Prices, "prices rise")];

    /// <summary>Why it turned: each change that is enough by itself.</summary>
    public static string Why(Turn turn) => turn.By == Change.None
        ? "only all together"
        : string.Join(" or ", Causes.Where(cause => turn.By.HasFlag(cause.Change)).Select(cause => cause.Word));

    /// <summary>A day as people write it.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A day as files have it.</summary>
    public static string Plain(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The sentence that an entry tells, without its full stop.</summary>
    public static string Say(LedgerEntry entry) => entry.Story.Say(entry).Trim().TrimEnd('.');

    /// <summary>What was added by some year: <c>+3 camera, +3 phone</c>.</summary>
    public static string Added(IReadOnlyList<AddedDevices> added)
    {
        var parts = added.Where(one => one.Count > 0).Select(one => $"+{one.Count} {one.Name}").ToList();
        return parts.Count == 0 ? "nothing" : string.Join(", ", parts);
    }
}
