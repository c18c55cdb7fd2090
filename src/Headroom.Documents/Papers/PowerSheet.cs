using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Jobs;
using Headroom.Domain.Shown;
using Headroom.Engineering.Power;

namespace Headroom.Documents.Papers;

/// <summary>The watts of every switch and injector: what there is, what is asked in each state, port by port, and what goes dark first.</summary>
internal static class PowerSheet
{
    /// <summary>What stands on it; null when nothing in the design gives power.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        var power = input.Results.Power;
        var units = power.Switches.Where(unit => unit.Ports.Count > 0 || unit.Switch.PoweredPorts > 0).ToList();
        if (units.Count == 0 && power.Injectors.Count == 0)
            return null;
        var blocks = new List<Block>();
        foreach (var unit in units)
            blocks.AddRange(OfSwitch(unit));
        if (power.Injectors.Count > 0)
            blocks.AddRange(Injectors(power.Injectors));
        if (power.Unserved.Count > 0)
            blocks.Add(new Words($"No port is left or told for {Written.List([.. power.Unserved.Select(endpoint => endpoint.Id)])}."));
        blocks.Add(new Words("Watts are those at the port of the switch, the loss on the cable included. A question mark stands where something is not known yet; the paper of limits says what to ask.", Lettering.Label));
        return blocks;
    }

    private static IEnumerable<Block> OfSwitch(SwitchPower unit)
    {
        yield return new Heading($"{unit.Switch.Id}, {unit.Switch.Model.Id}");
        yield return new Facts(
        [
            ("supply", unit.Switch.Supply?.Id ?? "not known"), ("for its ports", unit.BudgetWatts is { } budget ? Numbers.Show(budget, "W") : "not known"),
            ("hands out", By(unit.Setting.ReservesBy)), ("from the mains, most", unit.Supply.Worst is { } worst ? Numbers.Show(worst.MainsWatts, "W") : "not known"),
        ]);
        yield return new Table(
            [new("state"), new("asked [W]", Anchor.End), new("there is [W]", Anchor.End), new("left [W]", Anchor.End), new("stays dark") { Grows = true }],
            [.. unit.States.Select(state => State(unit, state))]);
        if (unit.Ports.Count == 0)
            yield break;
        yield return new Table(
            [
                new("port", Anchor.End), new("device") { Grows = true }, new("model"), new("cable"), new("class asked", Anchor.End), new("class given", Anchor.End), new("priority"),
                new("ordinary [W]", Anchor.End), new("peak [W]", Anchor.End), new("night [W]", Anchor.End), new("set aside [W]", Anchor.End), new("starting [W]", Anchor.End),
            ],
            [.. unit.Ports.OrderBy(port => port.Port.Port).Select(port => Port(unit, port))]);
    }

    private static Row State(SwitchPower unit, StateAccount state)
    {
        var figures = Numbers.Together([state.DemandWatts, unit.BudgetWatts, unit.BudgetWatts - state.DemandWatts]);
        var least = state.Whole ? "" : "at least ";
        var known = state.Whole ? "" : $"{state.Known} of {state.All} devices known";
        var dark = string.Join(", ", state.Dark.Select(port => port.Id));
        return Row.Of(Of(state.State), least + figures[0], Or(figures[1]), (state.Whole || figures[2].Length == 0 ? "" : "at most ") + Or(figures[2]), string.Join("; ", new[] { dark, known }.Where(text => text.Length > 0)));
    }

    private static Row Port(SwitchPower unit, PoweredPort port) => Row.Of(
        Numbers.Show(port.Port.Port),
        port.Id,
        port.Endpoint.Model.Id,
        port.Endpoint.Endpoint.Drop ?? "",
        port.AskedClass is { } asked ? Numbers.Show(asked) : port.Feed.Passive is null ? "?" : "none",
        port.GrantedClass is { } granted ? Numbers.Show(granted) : port.Feed.Passive is null ? "?" : "none",
        SwitchCounter.PriorityOf(unit.Switch, port).ToString().ToLowerInvariant(),
        Written.Figure(port.In(PowerState.Typical).PortWatts),
        Written.Figure(port.In(PowerState.Peak).PortWatts),
        port.Endpoint.Model.Draws.ContainsKey("night") ? Written.Figure(port.In(PowerState.Night).PortWatts) : "",
        Written.Figure(unit.SettledReserve(port)),
        Written.Figure(unit.StartReserve(port)));

    private static IEnumerable<Block> Injectors(IReadOnlyList<InjectorPower> injectors)
    {
        yield return new Heading("Injectors and midspans");
        yield return new Table(
            [new("injector"), new("model"), new("feeds") { Grows = true }, new("asked [W]", Anchor.End), new("there is [W]", Anchor.End), new("left [W]", Anchor.End)],
            [.. injectors.Select(one =>
            {
                var figures = Numbers.Together([one.DemandWatts, one.BudgetWatts, one.BudgetWatts - one.DemandWatts]);
                var least = one.Known < one.Asking.Count;
                return Row.Of(one.Injector.Id, one.Injector.Model.Id, string.Join(", ", one.Ports.Select(port => port.Id)), (least ? "at least " : "") + figures[0], Or(figures[1]), (least && figures[2].Length > 0 ? "at most " : "") + Or(figures[2]));
            })]);
    }

    private static string Or(string figure) => figure.Length > 0 ? figure : "?";

    private static string By(ReservesBy by) => by switch
    {
        ReservesBy.Class => "by the class of each device",
        ReservesBy.PortLimit => "by the limit of each port",
        ReservesBy.Negotiated => "as negotiated with each device",
        ReservesBy.Measured => "by what is drawn",
        _ => "by what each device takes at its start",
    };

    private static string Of(PowerState state) => state switch
    {
        PowerState.Typical => "in an ordinary hour",
        PowerState.Peak => "all at their peak",
        PowerState.Night => "at night",
        PowerState.Frost => "in a night of frost",
        _ => "after a power cut",
    };
}
