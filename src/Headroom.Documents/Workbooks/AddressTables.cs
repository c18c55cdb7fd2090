using Headroom.Documents.Papers;
using Headroom.Domain.Tables;

namespace Headroom.Documents.Workbooks;

/// <summary>The plan of addresses as tables.</summary>
internal static class AddressTables
{
    /// <summary>One row a subnet.</summary>
    public static BookTable Subnets(PaperInput input) => new(
        "subnets",
        [
            new("VLAN", CellSort.Number), new("name"), new("for"), new("range"), new("range, version 6"), new("mask"), new("router"), new("lent out from"), new("lent out to"), new("lease"), new("today", CellSort.Number), new("made for", CellSort.Number),
            new("holds", CellSort.Number),
        ],
        [.. (input.Results.Addressing?.Subnets ?? []).Select(subnet => (IReadOnlyList<object?>)
        [
            (double?)subnet.Subnet.Vlan, subnet.Subnet.Id, string.Join(", ", subnet.Subnet.For.Concat(subnet.Subnet.In.Select(place => $"in {place}"))) is { Length: > 0 } what ? what : null, subnet.Range?.ToString(), subnet.Six?.ToString(),
            subnet.Range?.Mask.ToString(), subnet.Router?.ToString(), subnet.Pool?.First.ToString(), subnet.Pool?.Last.ToString(), subnet.Subnet.Visitors?.Lease.Written, (double)subnet.Today, (double)subnet.Planned, (double?)subnet.Range?.Hosts,
        ])]);

    /// <summary>One row a device with an address.</summary>
    public static BookTable Devices(PaperInput input)
    {
        var endpoints = input.Results.Bound.Endpoints.ToDictionary(endpoint => endpoint.Id);
        return new(
            "addresses",
            [new("device"), new("model"), new("subnet"), new("VLAN", CellSort.Number), new("address"), new("name"), new("on port"), new("cable"), new("room"), new("hardware address")],
            [.. (input.Results.Addressing?.Subnets ?? []).SelectMany(subnet => subnet.Devices.Select(device =>
            {
                var on = endpoints.GetValueOrDefault(device.Id);
                return (IReadOnlyList<object?>)
                [
                    device.Id, on?.Model.Id, subnet.Subnet.Id, (double?)subnet.Subnet.Vlan, device.Address?.ToString(), device.Name, on?.Port?.Ref.ToString(), on?.Endpoint.Drop, on?.Run?.Drop.To ?? on?.Endpoint.Near, on?.Endpoint.Hardware,
                ];
            }))]);
    }
}
