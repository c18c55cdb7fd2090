using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Shown;
using Headroom.Engineering.Addressing;

namespace Headroom.Documents.Papers;

/// <summary>The plan of addresses and VLANs: every subnet, then every device with its address and name.</summary>
internal static class AddressSheet
{
    /// <summary>What stands on it; null without a plan.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        if (input.Results.Addressing is not { Subnets.Count: > 0 } plan)
            return null;
        List<Block> blocks =
        [
            new Facts(
            [
                ("taken from", plan.Plan.From?.Written ?? "not known"), ("used elsewhere", string.Join(", ", plan.Plan.Elsewhere.Select(range => range.Written)) is { Length: > 0 } elsewhere ? elsewhere : "nothing said"),
                ("names", plan.Plan.Names is null ? "no pattern said" : $"{plan.Plan.Names.Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal)}{(plan.Plan.Suffix is { } suffix ? $".{suffix}" : "")}"), ("growth", plan.Plan.Growth?.Written ?? "none said"),
            ]),
            new Table(
                [
                    new("VLAN", Anchor.End), new("name"), new("for") { Grows = true }, new("range"), new("mask"), new("router"), new("devices from"), new("lent out"), new("lease"),
                    new("today", Anchor.End), new("made for", Anchor.End), new("holds", Anchor.End),
                ],
                [.. plan.Subnets.Select(OfSubnet)]),
        ];
        foreach (var subnet in plan.Subnets.Where(subnet => subnet.Devices.Count > 0))
            blocks.AddRange(Devices(input, subnet));
        if (plan.Homeless.Count > 0)
            blocks.Add(new Words($"For these no subnet is made: {Written.List(plan.Homeless)}. Into which do they go?"));
        foreach (var (name, ids) in plan.NamesClashing)
            blocks.Add(new Words($"Two devices would be called {name}: {ids}."));
        return blocks;
    }

    private static Row OfSubnet(AddressedSubnet subnet) => Row.Of(
        subnet.Subnet.Vlan is { } vlan ? Numbers.Show(vlan) : "",
        subnet.Subnet.Id,
        string.Join(", ", subnet.Subnet.For.Concat(subnet.Subnet.In.Select(place => $"in {place}"))) is { Length: > 0 } what ? what : subnet.Subnet.Visitors is null ? "" : "visitors",
        subnet.Range is { } range ? range.ToString() + (subnet.Six is { } six ? $"\n{six}" : "") : "no place found",
        subnet.Range?.Mask.ToString() ?? "",
        subnet.Router?.ToString() ?? "",
        subnet.Devices.Select(device => device.Address?.ToString()).FirstOrDefault(address => address is not null) ?? "",
        subnet.Pool is { } pool ? $"{pool.First} to {pool.Last}" : "none",
        subnet.Subnet.Visitors?.Lease.Written ?? "",
        Numbers.Show(subnet.Today),
        Numbers.Show(subnet.Planned),
        subnet.Range is { } whole ? Numbers.Show(whole.Hosts) : "?");

    private static IEnumerable<Block> Devices(PaperInput input, AddressedSubnet subnet)
    {
        var endpoints = input.Results.Bound.Endpoints.ToDictionary(endpoint => endpoint.Id);
        yield return new Heading(subnet.Subnet.Vlan is { } vlan ? $"{subnet.Subnet.Id}, VLAN {Numbers.Show(vlan)}" : subnet.Subnet.Id);
        yield return new Table(
            [new("device"), new("model"), new("address"), new("name") { Grows = true }, new("on port"), new("cable"), new("room"), new("hardware address") { Least = 100 }, new("remark") { Least = 70 }],
            [.. subnet.Devices.Select(device =>
            {
                var on = endpoints.GetValueOrDefault(device.Id);
                return Row.Of(
                    device.Id, on?.Model.Id ?? "", device.Address?.ToString() ?? "no place found", device.Name ?? "",
                    on?.Port?.Ref.ToString() ?? "", on?.Endpoint.Drop ?? "", on?.Run?.Drop.To ?? on?.Endpoint.Near ?? "", on?.Endpoint.Hardware ?? "");
            })]);

    }
}
