using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Rules;

/// <summary>Reserves are written for kinds of limit that exist, in units they are measured in.</summary>
internal static class PolicyRules
{
    private static readonly string[] GrowthKinds = ["powered ports", "all ports"];

    private static readonly Dictionary<string, Func<string, bool>> Reads = new()
    {
        ["W"] = Is<Watts>,
        ["V"] = Is<Volts>,
        ["A"] = Is<Amperes>,
        ["mA"] = Is<Amperes>,
        ["ms"] = Is<Seconds>,
        ["min"] = Is<Seconds>,
        ["d"] = Is<Seconds>,
        ["h"] = Is<Seconds>,
        ["VA"] = Is<VoltAmperes>,
        ["m"] = Is<Metres>,
        ["mm"] = Is<Metres>,
        ["dB"] = text => Is<Decibels>(text) || Is<SoundPressure>(text),
        ["K"] = Is<Kelvins>,
        ["Mb/s"] = Is<BitsPerSecond>,
        ["U"] = Is<RackUnits>,
        ["kg"] = Is<Kilograms>,
        ["Ω"] = Is<Ohms>,
    };

    /// <summary>Checks the house rules.</summary>
    public static void Check(Policy policy, Slips slips)
    {
        foreach (var (kind, reserve) in policy.Reserves)
        {
            var at = reserve.At.Line > 0 ? reserve.At : policy.At;
            if (!Policy.Kinds.TryGetValue(kind, out var unit))
                slips.Unknown(RuleCodes.UnknownReserve, at, new("kind of limit", kind, "the reserve", "that has a reserve"), Policy.Kinds.Keys);
            else if (reserve.Amount is not null && Reads.TryGetValue(unit, out var reads) && !reads(reserve.Written))
                slips.Add(RuleCodes.ReserveUnit, at, Unit(kind, unit, reserve.Written));
        }

        foreach (var (kind, growth) in policy.Growth)
        {
            var at = growth.At.Line > 0 ? growth.At : policy.At;
            if (!GrowthKinds.Contains(kind))
                slips.Unknown(RuleCodes.UnknownReserve, at, new("kind of port", kind, "the growth", "that may grow"), GrowthKinds);
        }
    }

    private static Said Unit(string kind, string unit, string written) => new(
        $"the reserve of {kind} is '{written}'",
        $"it is a share in % or an amount in {unit}",
        $"Write it with its unit, such as '20 %' or '2 {unit}'.");

    private static bool Is<T>(string text)
        where T : struct, IQuantity<T> => QuantityText.Read<T>(text, Findings.Place.None, out _) is not null;
}
