using Headroom.Domain.Jobs;

namespace Headroom.Domain.Ledgers;

/// <summary>Turns demand, limit and reserve into a verdict. There is no second place where this is decided.</summary>
public static class Judge
{
    // Half a part in a thousand million: sums of tenths of a watt must not fail by their last binary digit. Nothing measured is that fine.
    private const double Grain = 5e-10;

    /// <summary>Judges an entry whose numbers are all known.</summary>
    /// <param name="demand">What is asked or needed.</param>
    /// <param name="limit">The limit, or what is there.</param>
    /// <param name="reserve">The reserve wanted, in the same unit.</param>
    /// <returns>Short beyond the limit, tight inside it but not the reserve, else clear.</returns>
    public static Verdict Known(double demand, double limit, double reserve)
    {
        var left = limit - demand;
        var grain = Grain * Math.Max(1, Math.Max(Math.Abs(limit), Math.Abs(demand)));
        return left < -grain ? Verdict.Short
            : left < reserve - grain ? Verdict.Tight
            : Verdict.Clear;
    }

    /// <summary>Judges an entry of which parts may be missing.</summary>
    /// <param name="demand">What is asked, or the part of it that is known; null when nothing is.</param>
    /// <param name="limit">The limit; null when not known.</param>
    /// <param name="reserve">The reserve wanted.</param>
    /// <param name="parts">How much of the demand is known; null when all.</param>
    /// <returns>Short when even the known part is beyond the limit, unknown when something is missing, else as <see cref="Known"/>.</returns>
    public static Verdict Of(double? demand, double? limit, Reserve reserve, KnownParts? parts = null)
    {
        if (demand is not { } asked || limit is not { } there)
            return Verdict.Unknown;
        var verdict = Known(asked, there, reserve.Of(there));
        return parts is null || parts.Known == parts.All || verdict == Verdict.Short ? verdict : Verdict.Unknown;
    }
}
