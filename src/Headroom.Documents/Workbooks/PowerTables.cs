using Headroom.Documents.Papers;
using Headroom.Domain.Tables;
using Headroom.Engineering.Power;

namespace Headroom.Documents.Workbooks;

/// <summary>The power sheet as tables.</summary>
internal static class PowerTables
{
    /// <summary>One row a switch and state.</summary>
    public static BookTable States(PaperInput input) => new(
        "power states",
        [
            new("switch"), new("state"), new("asked", CellSort.Number, "W"), new("there is", CellSort.Number, "W"), new("left", CellSort.Number, "W"), new("devices known", CellSort.Number), new("devices", CellSort.Number), new("stays dark"),
        ],
        [.. input.Results.Power.Switches.Where(unit => unit.Ports.Count > 0).SelectMany(unit => unit.States.Select(state => (IReadOnlyList<object?>)
        [
            unit.Switch.Id, state.State.ToString().ToLowerInvariant(), BookTables.Finite(state.DemandWatts), BookTables.Finite(unit.BudgetWatts), BookTables.Finite(unit.BudgetWatts - state.DemandWatts), (double)state.Known, (double)state.All,
            state.Dark.Count == 0 ? null : string.Join(", ", state.Dark.Select(port => port.Id)),
        ]))]);

    /// <summary>One row a port that gives power.</summary>
    public static BookTable Powered(PaperInput input) => new(
        "power ports",
        [
            new("switch"), new("port", CellSort.Number), new("device"), new("model"), new("cable"), new("class asked", CellSort.Number), new("class given", CellSort.Number), new("ordinary", CellSort.Number, "W"), new("peak", CellSort.Number, "W"),
            new("set aside", CellSort.Number, "W"), new("starting", CellSort.Number, "W"),
        ],
        [.. input.Results.Power.Switches.SelectMany(unit => unit.Ports.OrderBy(port => port.Port.Port).Select(port => (IReadOnlyList<object?>)
        [
            unit.Switch.Id, (double)port.Port.Port, port.Id, port.Endpoint.Model.Id, port.Endpoint.Endpoint.Drop, (double?)port.AskedClass, (double?)port.GrantedClass, BookTables.Finite(port.In(PowerState.Typical).PortWatts),
            BookTables.Finite(port.In(PowerState.Peak).PortWatts), BookTables.Finite(unit.SettledReserve(port)), BookTables.Finite(unit.StartReserve(port)),
        ]))]);
}
