using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Sums.Standby;

/// <summary>Watts and volt-amperes of a load, and what a supply gives of both.</summary>
internal static class StandbyLoad
{
    private static readonly QuantityInput Load = new("load", "real power of the load", Watts.Units, new(0, 50_000, "W"));
    private static readonly QuantityInput Factor = new("power-factor", "of the load", Share.Units, new(30, 100, "%")) { Default = "90 %", DefaultWhy = "taken for supplies that correct it" };
    private static readonly QuantityInput Real = new("real", "watts the supply gives", Watts.Units, new(20, 100_000, "W")) { IsOptional = true };
    private static readonly QuantityInput Apparent = new("apparent", "volt-amperes the supply gives", VoltAmperes.Units, new(20, 100_000, "VA")) { IsOptional = true };

    private static readonly SumOutput VoltAmp = new("volt-amperes", "VA", "apparent power of the load");
    private static readonly SumOutput Most = new("most-watts", "W", "the supply gives at this power factor");
    private static readonly SumOutput Left = new("left", "W", "left of it");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "standby-load",
        Discipline = StandbySums.Discipline,
        Answers = "does a load fit a standby supply, in watts and in volt-amperes?",
        Inputs = [Load, Factor, Real, Apparent],
        Outputs = [VoltAmp, Most, Left],
        Formula = "S = P / power factor; most = min(P_rated, S_rated · power factor)",
        Source = "definition of apparent power; both limits bind",
        Example = "load 410 W power-factor 92 % real 530 W apparent 870 VA",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (load, factor) = (given[Load], given[Factor]);
        var apparent = ConverterLoad.ApparentVoltAmperes(load, factor);
        var figures = new List<SumFigure> { VoltAmp.Is(apparent) };
        var steps = new List<WorkingStep> { new("S", $"{Words.Of(load)} W / {Words.Of(factor)}", apparent, "VA") };
        if ((given.Maybe(Real) ?? given.Maybe(Apparent)) is null)
            return new SumAnswer($"The load is {new Told(apparent, "VA")}.", figures, steps);
        var most = Math.Min(given.Maybe(Real) ?? double.PositiveInfinity, (given.Maybe(Apparent) ?? double.PositiveInfinity) * factor);
        figures.AddRange([Most.Is(most), Left.Is(most - load)]);
        steps.Add(new("most", "the smaller of both limits at this power factor", most, "W"));
        return load <= most
            ? new SumAnswer($"It fits: the load is {new Told(apparent, "VA")}, and the supply gives {new Told(most, "W")} at this power factor.", figures, steps)
            : new SumAnswer($"It does not fit: the supply gives {new Told(most, "W")} at this power factor, and {new Told(load, "W")} are asked.", figures, steps) { Holds = false };
    }
}
