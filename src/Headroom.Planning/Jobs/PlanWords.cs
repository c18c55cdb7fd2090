using System.Globalization;
using Headroom.Domain.Ledgers;

namespace Headroom.Planning.Jobs;

/// <summary>How a plan says things.</summary>
internal static class PlanWords
{
    /// <summary>A number as people write it: three or four figures.</summary>
    public static string Of(double value) => Math.Abs(value) >= 1000 ? value.ToString("0", CultureInfo.InvariantCulture) : value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>An amount without more places than it has.</summary>
    public static string Of(decimal amount) => amount.ToString(amount == decimal.Truncate(amount) ? "0" : "0.00", CultureInfo.InvariantCulture);

    /// <summary>What an entry comes to.</summary>
    public static string Of(LedgerEntry entry)
    {
        var name = $"{entry.Subject}, {entry.What}";
        if (entry.Verdict == Verdict.Unknown)
            return $"{name}: not known{(entry.Question is { } question ? $" ({question})" : "")}";
        var wants = entry.Verdict == Verdict.Tight ? $", and {Of(entry.Reserve ?? 0)} are to stay free" : "";
        return entry.Demand is { } demand && entry.Limit is { } limit
            ? $"{name}: {Of(demand)} {entry.Unit} of {Of(limit)}{wants}"
            : $"{name}: {(entry.Verdict == Verdict.Short ? "short" : "reserve not kept")}";
    }

    /// <summary>Some things with how many there are of each.</summary>
    public static string Counted(IEnumerable<string> things) =>
        string.Join(" + ", things.GroupBy(thing => thing).Select(group => group.Count() == 1 ? group.Key : $"{group.Count()} x {group.Key}"));
}
