using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A reserve that is to stay free: a share of the limit, or an amount in the limit's own unit.</summary>
/// <param name="Share">The share of the limit, 0 to 1; null when an amount was written.</param>
/// <param name="Amount">The amount in the unit of the kind of limit (<see cref="Policy.Kinds"/>); null when a share was written.</param>
/// <param name="Written">The text as written.</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="At">Where it stands; <see cref="Place.None"/> for a default.</param>
public sealed record Reserve(double? Share, double? Amount, string Written, Origin Origin, Place At)
{
    /// <summary>A fifth of the limit.</summary>
    public static Reserve Fifth { get; } = new(0.2, null, "20 %", Origin.Unstated, Place.None);

    /// <summary>Three tenths of the limit.</summary>
    public static Reserve ThreeTenths { get; } = new(0.3, null, "30 %", Origin.Unstated, Place.None);

    /// <summary>No reserve.</summary>
    public static Reserve Nothing { get; } = new(0, null, "none", Origin.Unstated, Place.None);

    /// <summary>What the reserve is of a limit.</summary>
    /// <param name="limit">The limit.</param>
    /// <returns>The amount, in the limit's unit.</returns>
    public double Of(double limit) => Amount ?? (Share ?? 0) * Math.Abs(limit);
}
