using Headroom.Documents.Layout;
using Headroom.Domain.Shown;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;

namespace Headroom.Documents.Papers;

/// <summary>The sheet for the bench: each unit from the box to the van, with what every test should show.</summary>
internal static class BenchSheet
{
    private const double Found = 110;

    /// <summary>What stands on it; null without a unit.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        var units = PlacedUnit.Of(input);
        if (units.Count == 0)
            return null;
        var names = new DeviceNames(input);
        return [.. units.SelectMany((unit, i) => One(input, unit, names).Prepend(i > 0 ? new NewSheet() : new Gap(0)))];
    }

    private static IEnumerable<Block> One(PaperInput input, PlacedUnit unit, DeviceNames names)
    {
        yield return new Heading($"{unit.Id}, {unit.Kind}");
        yield return new Facts(
        [
            ("model", unit.Body?.Id ?? ""), ("serial number", ""), ("goes to", unit.Where(input.Job)), ("hardware address", ""),
            ("name", names.Name(unit.Id)), ("address", names.Address(unit.Id)), ("firmware found", ""), ("firmware now", ""),
        ]);
        yield return new Table(
            [Written.TickColumn, new("step"), new("what it should show") { Grows = true }, new("found") { Least = Found }, new("initials") { Least = 44 }],
            [.. Steps(input, unit, names).Select(step => Written.ToTick(step.Step, step.Expected) with { Least = Written.HandRow })]);
        yield return new Facts([("on the bench, by", ""), ("date", ""), ("remarks", ""), ("packed in box", "")]);
    }

    private static IEnumerable<(string Step, string Expected)> Steps(PaperInput input, PlacedUnit unit, DeviceNames names)
    {
        yield return ("unpack, look", "no dents, seal whole, ears, screws and cord in the box; serial number written above");
        var own = input.Results.Power.Switches.FirstOrDefault(one => one.Switch.Id == unit.Id) is { } power ? Switch(power, names)
            : input.Results.Bound.Injectors.FirstOrDefault(one => one.Id == unit.Id) is { } injector ? Injector(injector)
            : input.Results.Standby.Supplies.FirstOrDefault(one => one.Placed.Id == unit.Id) is { } supply ? Standby(supply) : [];
        foreach (var step in own)
            yield return step;
        yield return ("label", $"{unit.Id} on its front and on its plug");
    }

    private static IEnumerable<(string Step, string Expected)> Switch(SwitchPower power, DeviceNames names)
    {
        var unit = power.Switch;
        yield return ("power on, nothing plugged in", $"from the mains {Or(power.SupplyAt(0)?.MainsWatts, "W")}{(unit.Model.Boot is { } boot ? $"; ports served after {Numbers.Show(boot.Value.Value, "s")}" : "")}");
        yield return ("firmware", "the version agreed for this job, written above; settings wiped before");
        yield return ("name and address", $"{Or(names.Name(unit.Id), "to be given")}; {Or(names.Address(unit.Id), "to be given")}{(names.Vlan(unit.Id) is { Length: > 0 } vlan ? $"; VLAN {vlan}" : "")}");
        yield return ("password, clock, names of ports", "own password, not the maker's; kept where the firm keeps them, never on paper");
        yield return ("hands out watts", By(power));
        if (unit.Model.Ports.Any(group => group.Passive is not null))
            yield return ("passive voltage", $"{(unit.Placed.PassivePorts is { Count: > 0 } ports ? $"on at {string.Join(", ", ports)} only" : "off at every port where it can be switched off")}; read with a meter before anything is plugged in");
        var first = power.Ports.Where(port => port.Fault == PortFault.None).MaxBy(port => port.In(port.Worst).PortWatts);
        if (first is not null)
            yield return ($"one {first.Endpoint.Model.Id} at port {Numbers.Show(first.Port.Port)}", $"class {(first.GrantedClass is { } granted ? Numbers.Show(granted) : "not known")}, {Or(first.In(PowerState.Typical).PortWatts, "W")} in an ordinary hour, most {Or(first.GrantWatts, "W")}");
        yield return ("soak, 24 h or a night", $"under the load of the site {Or(power.Supply.Typical?.MainsWatts, "W")} from the mains; no restart, no port lost, fans steady");
        yield return ("settings saved", "copy kept apart from the unit; restored once, to know that it works");
    }

    private static IEnumerable<(string Step, string Expected)> Injector(BoundInjector injector)
    {
        yield return ("power on, nothing plugged in", "lamp on; read the volts at its outlet before a device is plugged in");
        yield return ("fed", injector.Placed.FedBy is { } feed ? $"from {feed}" : "from the mains");
        yield return ("data side", injector.Placed.From.Count > 0 ? $"from {string.Join(", ", injector.Placed.From)}" : "not said");
        yield return ("soak, one hour with its device", "no restart; case warm, not hot");
    }

    private static IEnumerable<(string Step, string Expected)> Standby(Engineering.Standby.StandbySupply supply)
    {
        yield return ("batteries", supply.Battery is { } battery ? $"{Numbers.Show(supply.Model.Blocks ?? 0)} of {battery.Id}; date on their lid written here" : "date on their lid written here");
        yield return ("charge for a day", "full, before any test");
        yield return ("load", $"on its outlets at most: {Written.List([.. supply.Fed.Select(fed => $"{fed.Id} {Or(fed.MostWatts, "W")}")])}");
        yield return ("mains off, ten minutes", $"nothing restarts{(supply.Governing?.Seconds is { } seconds ? $"; it should hold {Numbers.Show(Math.Floor(seconds / 60), "min")} even when aged and cold" : "")}");
        yield return ("mains on", "charges again, no alarm");
    }

    private static string By(SwitchPower power) => power.Setting.ReservesBy.ToString() switch
    {
        "Class" => "by class",
        "PortLimit" => "by the limit of each port",
        "Negotiated" => "as negotiated",
        "Measured" => "by what is drawn",
        _ => "by Autoclass",
    } + $", {Or(power.BudgetWatts, "W")} for its ports{(power.Setting.Assumed ? "; nobody said the way, look it up and write it down" : "")}";

    private static string Or(double? value, string unit) => value is { } known ? Numbers.Show(known, unit) : "not known";

    private static string Or(string text, string otherwise) => text.Length > 0 ? text : otherwise;
}
