using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>The house rules: reserves that are to be kept and what else the firm decides once.</summary>
/// <param name="Reserves">The reserve wanted, by the name of the limit's kind (<c>power</c>, <c>ports</c>, <c>volts</c> ...).</param>
/// <param name="Growth">What is to be added over the years, by port kind (<c>powered ports</c>, <c>all ports</c>).</param>
/// <param name="PricesAsOf">The day on which the prices were right; null when not written.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Policy(
    IReadOnlyDictionary<string, Reserve> Reserves,
    IReadOnlyDictionary<string, Reserve> Growth,
    DateOnly? PricesAsOf,
    Place At)
{
    /// <summary>The kinds of limit that have a reserve of a fifth unless the policy says otherwise; all others have none.</summary>
    public static IReadOnlySet<string> AFifthByDefault { get; } = new HashSet<string> { "power", "apparent", "ports", "rack", "weight" };

    /// <summary>The kinds of limit that have a reserve of three tenths unless the policy says otherwise: above seven tenths of a line frames begin to wait.</summary>
    public static IReadOnlySet<string> ThreeTenthsByDefault { get; } = new HashSet<string> { "uplink", "port speed" };

    /// <summary>The kinds of limit for which a reserve can be written, with what an amount is measured in.</summary>
    public static IReadOnlyDictionary<string, string> Kinds { get; } = new Dictionary<string, string>
    {
        ["power"] = "W",
        ["ports"] = "ports",
        ["port power"] = "W",
        ["volts"] = "V",
        ["amperes"] = "A",
        ["start"] = "ms",
        ["keep-alive"] = "mA",
        ["length"] = "m",
        ["sound"] = "dB",
        ["temperature"] = "K",
        ["air"] = "m3/h",
        ["runtime"] = "min",
        ["apparent"] = "VA",
        ["back"] = "min",
        ["kept"] = "boxes",
        ["uplink"] = "Mb/s",
        ["port speed"] = "Mb/s",
        ["switching"] = "%",
        ["recording"] = "d",
        ["dark"] = "ports",
        ["outage"] = "h",
        ["supplies"] = "supplies",
        ["supply lost"] = "W",
        ["spares"] = "pieces",
        ["fibre"] = "dB",
        ["rack"] = "U",
        ["depth"] = "mm",
        ["weight"] = "kg",
        ["fill"] = "%",
        ["cords"] = "m",
        ["ohms"] = "Ω",
        ["unbalance"] = "Ω",
        ["bundle"] = "cables",
        ["separation"] = "mm",
        ["money"] = "%",
        ["outlets"] = "outlets",
        ["clearance"] = "mm",
        ["addresses"] = "addresses",
    };

    /// <summary>What is bought beyond the measured lengths of cable, as a share of them; null when not written.</summary>
    public Given<Share>? CableWaste { get; init; }

    /// <summary>Share of calls that may find no way out in the busy hour; null when not written.</summary>
    public Given<Share>? CallsLost { get; init; }

    /// <summary>What may fail, and how long; null when nobody set anything.</summary>
    public FailureRules? Failures { get; init; }

    /// <summary>What changes with the years; null when nobody wrote it.</summary>
    public YearsPolicy? Years { get; init; }

    /// <summary>What is wanted of an outage of the mains.</summary>
    public OutagePolicy Outage { get; init; } = OutagePolicy.None;

    /// <summary>The rules when nobody has written any.</summary>
    public static Policy None { get; } = new(new Dictionary<string, Reserve>(), new Dictionary<string, Reserve>(), null, Place.None);

    /// <summary>The reserve that is to be kept of a kind of limit.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>The policy's reserve, else a fifth, three tenths or none by the kind.</returns>
    public Reserve ReserveOf(string kind) =>
        Reserves.TryGetValue(kind, out var reserve) ? reserve
        : AFifthByDefault.Contains(kind) ? Reserve.Fifth
        : ThreeTenthsByDefault.Contains(kind) ? Reserve.ThreeTenths
        : Reserve.Nothing;
}
