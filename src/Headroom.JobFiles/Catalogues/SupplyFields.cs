using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>The supplies of switches and injectors.</summary>
internal static class SupplyFields
{
    private static readonly Field<Given<Watts>> PortWatts = new("ports together", () => Sensible.SupplyWatts, "What it leaves for all powered ports together.", "123 W declared");
    private static readonly Field<Given<Volts>> PortVolts = new("port volts", () => Sensible.CableVolts, "The voltage at the ports; where it is not written, the least of the standard counts.", "54 V declared");
    private static readonly Field<Given<Watts>> Rated = new("rated", () => Sensible.SupplyWatts, "Its rated output.", "180 W");

    private static readonly Field<IReadOnlyList<Entry<Given<Share>, Given<Share>>>> Efficiency = new(
        "efficiency",
        Points.Table(Sensible.Share, Sensible.Efficiency, ("20 %", "84 %")),
        "Efficiency by share of the rated output.",
        "{20 %: 84 %, 50 %: 88 %, 100 %: 87 %}");

    private static readonly Field<string> Input = new("input", Shapes.Words("ac", "dc"), "What it is fed with.", "ac");
    private static readonly Field<Given<Volts>> InputVolts = new("input volts", () => Sensible.InputVolts, "The input voltage it takes.", "100..240 V");
    private static readonly Field<Given<Share>> PowerFactor = new("power factor", () => Sensible.PowerFactor, "Real over apparent power at its input.", "94 % declared");
    private static readonly Field<int> Pieces = new("pieces", () => new CountShape(1, 8), "How many supplies alike it is made of, each of which may fail by itself; one without it.", "2");
    private static readonly Field<Given<Watts>> OneLost = new("one lost", () => Sensible.SupplyWatts, "What is left for all powered ports together when one of its pieces has failed.", "61 W declared");
    private static readonly Field<Given<Money>> Price = new("price", new MoneyShape(), "What it adds to the price of the model.", "41 EUR invented");

    /// <summary>A supply.</summary>
    public static ObjectShape<SupplyModel> Shape { get; } = new("supply", [PortWatts, PortVolts, Rated, Efficiency, Input, InputVolts, PowerFactor, Pieces, OneLost, Price], Build);

    private static SupplyModel Build(Values values)
    {
        var portWatts = values.Get(PortWatts);
        var rated = values.Get(Rated);
        if (portWatts is not null && rated is not null && portWatts.Value.Value > rated.Value.Value)
            RefuseMore(values, portWatts, rated);
        var pieces = values.Maybe(Pieces) ?? 1;
        var oneLost = values.Get(OneLost);
        if (oneLost is not null && (pieces < 2 || oneLost.Value.Value > portWatts?.Value.Value))
            RefuseLost(values, oneLost, pieces < 2 ? null : portWatts);
        return new SupplyModel("", portWatts, values.Get(PortVolts), rated, EfficiencyOf(values), values.Get(Input), values.Get(InputVolts), values.Get(Price)) 
        {
            PowerFactor = values.Get(PowerFactor),
            Pieces = pieces,
            OneLost = oneLost,
        };
    }

    private static IReadOnlyList<EfficiencyPoint> EfficiencyOf(Values values)
    {
        using var step = values.Reader.Into("efficiency");
        return [.. Points.InOrder(values.List(Efficiency), load => load.Value.Value, values.Reader).Select(entry => new EfficiencyPoint(entry.Key, entry.Value))];
    }

    private static void RefuseLost(Values values, Given<Watts> oneLost, Given<Watts>? portWatts) => values.Reader.Refuse(
        ModelSlips.LostMore,
        oneLost.At,
        portWatts is null ? $"{values.Reader.Name} leaves {oneLost.Written} with one piece lost and is one piece" : $"{values.Reader.Name} leaves {oneLost.Written} with one piece lost and {portWatts.Written} with all",
        portWatts is null ? "'one lost' only beside 'pieces' of 2 or more" : "no more with one lost than with all",
        portWatts is null ? "write how many pieces it is made of, or leave it out" : "see whether the two are swapped");

    private static void RefuseMore(Values values, Given<Watts> portWatts, Given<Watts> rated) => values.Reader.Refuse(
        ModelSlips.MoreThanRated,
        portWatts.At,
        $"{values.Reader.Name} leaves {portWatts.Written} for the ports and is rated for {rated.Written}",
        "no more for the ports than it is rated for",
        "see whether the two are swapped");
}
