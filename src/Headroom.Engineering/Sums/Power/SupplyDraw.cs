using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Sums.Power;

/// <summary>What a switch takes from the mains and what of it stays as heat.</summary>
internal static class SupplyDraw
{
    private static readonly QuantityInput Own = new("own", "what the switch draws by itself, behind its supply", Watts.Units, new(0, 2000, "W"));
    private static readonly QuantityInput Ports = new("ports", "what leaves on the cables", Watts.Units, new(0, 20_000, "W"));
    private static readonly QuantityInput Efficiency = new("efficiency", "of the supply at this load", Share.Units, new(30, 100, "%"));
    private static readonly QuantityInput Path = new("path-efficiency", "of the way from the supply to the ports", Share.Units, new(50, 100, "%")) { Default = "100 %", DefaultWhy = "no loss on the way is taken" };
    private static readonly QuantityInput PowerFactor = new("power-factor", "of the supply at the mains", Share.Units, new(30, 100, "%")) { IsOptional = true };

    private static readonly SumOutput Mains = new("mains-watts", "W", "taken from the mains");
    private static readonly SumOutput Heat = new("heat", "W", "heat left where the switch stands");
    private static readonly SumOutput Btu = new("heat-btu", "BTU/h", "the same for an air-conditioning sheet");
    private static readonly SumOutput Apparent = new("mains-va", "VA", "apparent power at the mains");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "supply-draw",
        Discipline = PowerSums.Discipline,
        Answers = "what does a switch take from the mains, and how much heat does it leave?",
        Inputs = [Own, Ports, Efficiency, Path, PowerFactor],
        Outputs = [Mains, Heat, Btu, Apparent],
        Formula = "P_mains = (P_own + P_ports / η_path) / η; heat = P_mains − P_ports; VA = P_mains / power factor",
        Source = "balance of power; 1 W = 3.412 BTU/h by the definition of the international table BTU",
        Example = "own 18 W ports 90 W efficiency 88 %",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (own, ports) = (given[Own], given[Ports]);
        var mains = SupplyLosses.MainsWatts(own, ports, given[Efficiency], given[Path]);
        var heat = SupplyLosses.HeatLeftWatts(own, ports, given[Efficiency], given[Path]);
        var figures = new List<SumFigure> { Mains.Is(mains), Heat.Is(heat), Btu.Is(SupplyLosses.BtuPerHour(heat)) };
        var steps = new List<WorkingStep>
        {
            new("P_mains", $"({Words.Of(own)} W + {Words.Of(ports)} W / {Words.Of(given[Path])}) / {Words.Of(given[Efficiency])}", mains, "W"),
            new("heat", $"{Words.Of(mains)} W − {Words.Of(ports)} W", heat, "W"),
            new("the same", $"{Words.Of(heat)} W · 3.412", SupplyLosses.BtuPerHour(heat), "BTU/h"),
        };
        if (given.Maybe(PowerFactor) is { } factor)
        {
            figures.Add(Apparent.Is(mains / factor));
            steps.Add(new("VA", $"{Words.Of(mains)} W / {Words.Of(factor)}", mains / factor, "VA"));
        }

        return new SumAnswer($"It takes {new Told(mains, "W")} from the mains and leaves {new Told(heat, "W")} as heat where it stands.", figures, steps)
        {
            Notes = [$"A standby supply must deliver all of the mains watts; the heat of the rest appears at the devices and along the cables."],
        };
    }
}
