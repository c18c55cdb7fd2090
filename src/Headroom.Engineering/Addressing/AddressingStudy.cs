using Headroom.Domain.Addresses;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Addressing;

/// <summary>Gives subnets, addresses and names to what a design has.</summary>
public static class AddressingStudy
{
    /// <summary>How much a subnet is to grow where nobody wrote it [1]: as much again. Source: common practice, no source.</summary>
    public const double UsualGrowth = 1;

    /// <summary>Works out a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <returns>The result; null when the survey says nothing of addresses.</returns>
    public static AddressingResult? Of(BoundDesign bound)
    {
        if (bound.Job.Survey.Addresses is not { } plan)
            return null;
        var devices = Devices(bound, plan);
        var homeless = new List<string>();
        var bySubnet = plan.Subnets.ToDictionary(subnet => subnet.Id, _ => new List<Device>());
        foreach (var device in devices)
        {
            if (plan.Subnets.FirstOrDefault(subnet => Belongs(device, subnet)) is { } subnet)
                bySubnet[subnet.Id].Add(device);
            else
                homeless.Add(device.Id);
        }

        var subnets = Place(plan, bySubnet);
        return new AddressingResult(bound, plan, subnets, homeless, Clashing(devices), Wrong(devices, plan));
    }

    private static List<Device> Devices(BoundDesign bound, AddressPlan plan)
    {
        var names = plan.Names is null ? null : new HostNames(plan.Names);
        Device Make(string id, string kind, string? place, string? needs) => new(id, needs ?? kind, place, names?.Of(id, kind, place));
        var devices = new List<Device>();
        foreach (var unit in bound.Switches)
            devices.Add(Make(unit.Id, "switch", unit.Space, Subnet.Units));
        var racks = bound.Job.Survey.Racks.ToDictionary(rack => rack.Id, rack => rack.In);
        foreach (var unit in bound.Design.Standby)
            devices.Add(Make(unit.Id, "standby supply", unit.Standing.In is { } place ? racks.GetValueOrDefault(place, place) : null, Subnet.Units));
        foreach (var endpoint in bound.Endpoints)
            devices.Add(Make(endpoint.Id, endpoint.Model.Kind, endpoint.Endpoint.Near ?? endpoint.Run?.Drop.To, null));
        return devices;
    }

    private static bool Belongs(Device device, Subnet subnet) =>
        subnet.For.Contains(device.Needs) && (subnet.In.Count == 0 || (device.Place is { } place && subnet.In.Contains(place)));

    private static List<AddressedSubnet> Place(AddressPlan plan, Dictionary<string, List<Device>> bySubnet)
    {
        var room = plan.From is { } from ? new SubnetRoom(from.Value) : null;
        foreach (var elsewhere in plan.Elsewhere)
            room?.Keep(elsewhere.Value);
        foreach (var subnet in plan.Subnets)
        {
            if (subnet.Range is { } range)
                room?.Keep(range.Value);
        }

        var placed = new List<AddressedSubnet>();
        foreach (var subnet in plan.Subnets)
        {
            var devices = bySubnet[subnet.Id];
            var lent = (subnet.MoreHosts ?? 0) + Visiting(subnet);
            var planned = SubnetSize.Planned(devices.Count + lent, plan.Growth?.Value.Value ?? UsualGrowth);
            var range = subnet.Range?.Value ?? (SubnetSize.PrefixFor(planned) is { } prefix ? room?.Take(prefix) : null);
            var six = plan.Six?.Value.Part(subnet.Vlan ?? placed.Count, 64);
            placed.Add(new AddressedSubnet(subnet, Numbered(devices, range), lent, planned, range, six));
        }

        return placed;
    }

    private static int Visiting(Subnet subnet) => subnet.Visitors is not { } visitors ? 0
        : LeasePool.Needed(LeasePool.Mean(visitors.PerHour, LeasePool.HeldHours(visitors.Stay.Value.Value / 3600, visitors.Lease.Value.Value / 3600)), LeasePool.Enough);

    // The router has the first address; devices follow in the order of the survey, so that one added at its end moves nobody.
    private static List<AddressedDevice> Numbered(List<Device> devices, Ip4Range? range)
    {
        var numbered = new List<AddressedDevice>(devices.Count);
        foreach (var device in devices)
            numbered.Add(new AddressedDevice(device.Id, range is { } there && numbered.Count + 2 <= there.Hosts ? there.At(numbered.Count + 2) : null, device.Name));
        return numbered;
    }

    private static List<(string Name, string Ids)> Clashing(List<Device> devices) =>
        [.. devices.Where(device => device.Name is not null).GroupBy(device => device.Name!).Where(group => group.Count() > 1)
            .Select(group => (group.Key, Words.List([.. group.Select(device => device.Id)])))];

    private static List<(string Name, string Why)> Wrong(List<Device> devices, AddressPlan plan)
    {
        var wrong = new List<(string, string)>();
        foreach (var device in devices)
        {
            if (device.Name is not { } name)
                continue;
            var behind = plan.Suffix is null ? 0 : plan.Suffix.Length + 1;
            if (HostLabel.Wrong(name) is { } why)
                wrong.Add((name, why));
            else if (name.Length + behind > HostLabel.MostInAll)
                wrong.Add((name, $"with its suffix it has more than {HostLabel.MostInAll} characters"));
        }

        return wrong;
    }

    private sealed record Device(string Id, string Needs, string? Place, string? Name);
}
