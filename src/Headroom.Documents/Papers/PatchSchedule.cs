using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Shown;
using Headroom.Engineering.Binding;

namespace Headroom.Documents.Papers;

/// <summary>The patch schedule: every port of every switch on exactly one row, empty ones too.</summary>
internal static class PatchSchedule
{
    /// <summary>What stands on it; null without a switch.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        var bound = input.Results.Bound;
        if (bound.Switches.Count == 0)
            return null;
        var blocks = new List<Block>();
        foreach (var unit in bound.Switches)
        {
            blocks.Add(new Heading($"{unit.Id}, {unit.Model.Id}{(unit.Space is { } space ? $", in {space}" : "")}"));
            blocks.Add(new Table(
                [
                    new("port", Anchor.End), new("speed"), new("power"), new("cable"), new("room"), new("device") { Grows = true }, new("model"),
                    new("typical [W]", Anchor.End), new("name"), new("address"), new("remark") { Least = 110 },
                ],
                [.. Ports(unit).Select(port => RowOf(input, unit, port))]));
        }

        return blocks;
    }

    private static IEnumerable<int> Ports(BoundSwitch unit) =>
        unit.Model.Ports.SelectMany(group => Enumerable.Range(group.First, group.Last - group.First + 1)).Distinct().Order();

    private static Row RowOf(PaperInput input, BoundSwitch unit, int port)
    {
        var bound = input.Results.Bound;
        var group = unit.PortGroupOf(port)!;
        var on = bound.Endpoints.FirstOrDefault(endpoint => endpoint.Port is { Switch: { } its } patch && its.Id == unit.Id && patch.Port == port);
        var loose = bound.LooseDrops.FirstOrDefault(patch => patch.Switch?.Id == unit.Id && patch.Port == port);
        var link = (bound.Design.Uplinks ?? []).FirstOrDefault(uplink => Is(uplink.From, unit, port) || Is(uplink.To, unit, port));
        var device = input.Results.Addressing?.Subnets.SelectMany(subnet => subnet.Devices).FirstOrDefault(one => one.Id == on?.Id);
        var typical = on?.TakesPower == true ? input.Results.Power.Ports.FirstOrDefault(powered => powered.Endpoint.Id == on.Id) : null;
        return Row.Of(
            Numbers.Show(port),
            Speed(group),
            Power(unit, group, port),
            on?.Endpoint.Drop ?? loose?.What ?? link?.Drop ?? "",
            on is null ? "" : on.Run?.Drop.To ?? on.Endpoint.Near ?? "",
            on?.Id ?? (link is null ? "" : $"link to {(Is(link.From, unit, port) ? link.To : link.From)}"),
            on?.Model.Id ?? link?.Module ?? "",
            typical is null ? "" : on!.Model.Draws.GetValueOrDefault("typical") is { } draw ? Numbers.Show(draw.Value.Value) : "?",
            device?.Name ?? "",
            device?.Address?.ToString() ?? "",
            on?.Port?.Assumed == true ? "port not said, first free one" : "");
    }

    private static bool Is(PortRef at, BoundSwitch unit, int port) => at.Unit == unit.Id && at.Port == port;

    private static string Speed(PortGroup group) => group.Speeds.Count == 0 ? "" : string.Join(", ", group.Speeds.Select(speed => speed.Written));

    private static string Power(BoundSwitch unit, PortGroup group, int port) =>
        unit.PassiveOn(port) ? $"passive {group.Passive!.Volts.Written}" : group.Poe is { } poe ? poe.ToString() : "";
}
