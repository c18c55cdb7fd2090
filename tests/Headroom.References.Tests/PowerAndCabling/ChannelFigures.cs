using Headroom.Engineering.Cabling;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class ChannelFigures
{
    private static readonly double WorstConductorOhms = (90 * ChannelLimits.CableOhmsPerHundredMetres + 10 * ChannelLimits.CordOhmsPerHundredMetres) / 100;

    internal static Figure Work(Printed printed) => printed.What switch
    {
        "permanent link, most" => ChannelLimits.LinkMetres,
        "channel, most" => ChannelLimits.ChannelMetres,
        "conductor of horizontal cable, most" => ChannelLimits.CableOhmsPerHundredMetres,
        "24 AWG at 20 °C is within it" => OhmsPerHundredMetres(24) <= ChannelLimits.CableOhmsPerHundredMetres,
        "pair loop of a channel, most" => ChannelLimits.ChannelLoopOhms,
        "pair loop of a permanent link, most" => ChannelLimits.LinkLoopOhms,
        "conductor of a cord of 24 to 26 AWG, most" => ChannelLimits.CordOhmsPerHundredMetres,
        "26 AWG at 20 °C is within it" => OhmsPerHundredMetres(26) <= ChannelLimits.CordOhmsPerHundredMetres,
        "28 AWG, solid, at 20 °C" => OhmsPerHundredMetres(28),
        "within a pair of cable, most" => 100 * Unbalance.CableShare,
        "within a pair of a channel of 20 Ω, 3 %" => Unbalance.WithinLimitOhms(20),
        "within a pair of a channel of 5 Ω, 0.2 Ω" => Unbalance.WithinLimitOhms(5),
        "between pairs of 5 and 5 Ω side by side, 7 %" => Unbalance.BetweenLimitOhms(5, 5),
        "between pairs of 0.2 and 0.2 Ω, 50 mΩ" => 1000 * Unbalance.BetweenLimitOhms(0.2, 0.2),
        "22, 23, 24 and 26 AWG are allowed in the link" => Allowed([22, 23, 24, 26], ChannelLimits.ThinnestLinkAwg),
        "22, 26, 28 and 30 AWG are allowed in cords" => Allowed([22, 26, 28, 30], ChannelLimits.ThinnestCordAwg),
        "28 AWG is de-rated more than 26" => CordRule.Derating(Conductor.AreaSquareMillimetres(28)) > CordRule.Derating(Conductor.AreaSquareMillimetres(26)),
        "90 m at CH-2 and 10 m at CH-4, two-pair circuit" => WorstConductorOhms,
        "the same as a pair loop" => ChannelLimits.PairLoopOhms(WorstConductorOhms),
        _ => PrintedTables.Nothing(printed),
    };

    private static double OhmsPerHundredMetres(double awg) => 100 * Conductor.OhmsPerMetre(Conductor.AreaSquareMillimetres(awg), 20);

    private static Figure Allowed(double[] gauges, double thinnest) =>
        Figure.List(gauges.Select(awg => ChannelLimits.IsThickEnough(Conductor.AreaSquareMillimetres(awg), thinnest)));
}
