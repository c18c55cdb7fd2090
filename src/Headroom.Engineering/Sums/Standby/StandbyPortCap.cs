using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Sums.Standby;

/// <summary>The cap on port watts that keeps a standby supply within its limits.</summary>
internal static class StandbyPortCap
{
    private static readonly QuantityInput Real = new("real", "watts the supply gives", Watts.Units, new(20, 100_000, "W"));
    private static readonly QuantityInput Apparent = new("apparent", "volt-amperes the supply gives", VoltAmperes.Units, new(20, 100_000, "VA"));
    private static readonly QuantityInput Factor = new("power-factor", "of the switch's supply", Share.Units, new(30, 100, "%")) { Default = "90 %", DefaultWhy = "taken for supplies that correct it" };
    private static readonly QuantityInput Other = new("other", "what else hangs on the supply", Watts.Units, new(0, 50_000, "W")) { Default = "0 W", DefaultWhy = "the switch is alone on it" };
    private static readonly QuantityInput Own = new("own", "what the switch draws by itself, behind its supply", Watts.Units, new(0, 2000, "W"));
    private static readonly QuantityInput Efficiency = new("efficiency", "of the switch's supply", Share.Units, new(30, 100, "%"));
    private static readonly QuantityInput Path = new("path-efficiency", "of the way from that supply to the ports", Share.Units, new(50, 100, "%")) { Default = "100 %", DefaultWhy = "no loss on the way is taken" };

    private static readonly SumOutput Ports = new("ports", "W", "the ports may give together");
    private static readonly SumOutput Feed = new("feed", "W", "left for the switch at its feed");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "standby-port-cap",
        Discipline = StandbySums.Discipline,
        Answers = "how many watts may the ports give so that the standby supply keeps both its limits?",
        Inputs = [Real, Apparent, Factor, Other, Own, Efficiency, Path],
        Outputs = [Ports, Feed],
        Formula = "P_feed = min(P_rated, S_rated · power factor) − other; P_ports = (P_feed · η − P_own) · η_path",
        Source = "balance of power",
        Example = "real 530 W apparent 870 VA other 24 W own 26 W efficiency 88 %",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var feed = ConverterLoad.MostWatts(given[Real], given[Apparent], given[Factor]) - given[Other];
        var steps = new List<WorkingStep> { new("P_feed", $"the smaller of both limits − {Words.Of(given[Other])} W", feed, "W") };
        if (feed < 0 || ConverterLoad.PortCapWatts(feed, given[Own], given[Efficiency], given[Path]) is not { } ports)
            return new SumAnswer($"Nothing is left for the ports: the switch itself and the rest ask more than the supply gives.", [Feed.Is(feed)], steps) { Holds = false };
        steps.Add(new("P_ports", $"({Words.Of(feed)} W · {Words.Of(given[Efficiency])} − {Words.Of(given[Own])} W) · {Words.Of(given[Path])}", ports, "W"));
        return new SumAnswer($"The ports may give {new Told(ports, "W")} together.", [Ports.Is(ports), Feed.Is(feed)], steps);
    }
}
