using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies;

/// <summary>How much is amiss with an entry or a whole ledger, as one number, so that changes can be compared across watts, volts and decibels.</summary>
public static class Shortage
{
    /// <summary>What any entry that is short counts, before how much it is short by.</summary>
    public const double OfShort = 2;

    /// <summary>What an entry counts of which an input is missing.</summary>
    public const double OfUnknown = 1;

    /// <summary>How much is amiss with an entry. Source: our own measure, made to compare remedies and nothing else.</summary>
    /// <param name="entry">The entry.</param>
    /// <returns>0 when clear; the missing share of the reserve, up to 1, when tight; 1 when unknown; 2 and the missing share of the limit, up to 1, when short [1].</returns>
    public static double Of(LedgerEntry entry) => entry.Verdict switch
    {
        Verdict.Short => OfShort + Math.Clamp(-(entry.Left ?? 0) / Math.Max(1e-9, Math.Abs(entry.Limit ?? 0)), 0, 1),
        Verdict.Unknown => OfUnknown,
        Verdict.Tight => entry is { Reserve: > 0 and var wanted, Left: { } left } ? Math.Clamp((wanted - left) / wanted, 0, 1) : 1,
        _ => 0,
    };

    /// <summary>How much is amiss with a ledger: its entries together. Source: our own measure, made to compare remedies and nothing else.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <returns>The sum [1].</returns>
    public static double Of(Ledger ledger)
    {
        var sum = 0.0;
        foreach (var entry in ledger.Entries)
            sum += Of(entry);
        return sum;
    }
}
