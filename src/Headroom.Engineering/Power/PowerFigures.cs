using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>Figures of the power study that have no limit of their own: mains draw, heat, direct current.</summary>
internal static class PowerFigures
{
    /// <summary>The figures of a result.</summary>
    public static IEnumerable<Figure> Of(PowerResult result) => result.Switches.SelectMany(OfSwitch);

    private static IEnumerable<Figure> OfSwitch(SwitchPower s)
    {
        var id = s.Switch.Id;
        var question = s.Supply.Question;
        yield return Figure(s, ("mains", "taken from its feed in an ordinary hour"), s.Supply.Typical?.MainsWatts, typical: true);
        yield return Figure(s, ("mains-worst", "taken from its feed at its most"), s.Supply.Worst?.MainsWatts, typical: false);
        yield return Figure(s, ("heat", $"heat left in {s.Switch.Space ?? "its space"} in an ordinary hour"), s.Supply.Typical?.HeatWatts, typical: true);
        yield return Figure(s, ("heat-worst", $"heat left in {s.Switch.Space ?? "its space"} at its most"), s.Supply.Worst?.HeatWatts, typical: false);
        if (s.Switch.Supply is not { Input: "dc", InputVolts: { } volts })
            yield break;
        var least = volts.Value.Value - (volts.PlusMinus ?? 0);
        yield return new Figure(
            $"power/{id}/input-amperes", id, "direct current it takes at its most, at the least input voltage",
            s.Supply.Worst?.MainsWatts / least, "A", question,
            () => new Working(
                "I = P / V",
                [new("input at its most", s.Supply.Worst?.MainsWatts, "W", "this study"), new("least input voltage", least, "V", Binding.Origins.Of(volts))],
                [new("I", "watts / volts", s.Supply.Worst?.MainsWatts / least, "A")],
                "circuit theory"));
    }

    private static Figure Figure(SwitchPower s, (string Quantity, string What) of, double? watts, bool typical) => new(
        $"power/{s.Switch.Id}/{of.Quantity}", s.Switch.Id, of.What, watts, "W", watts is null ? s.Supply.Question ?? "a draw of a device is missing: see its entry" : null,
        () => typical ? SupplyStory.Work(s, s.Supply.Typical, s.Supply.TypicalPortWatts) : SupplyStory.Work(s, s.Supply.Worst, s.Supply.WorstPortWatts));
}
