using Headroom.Engineering.Addressing;

namespace Headroom.Documents.Papers;

/// <summary>Names and addresses by id.</summary>
internal sealed class DeviceNames
{
    private readonly Dictionary<string, (AddressedSubnet Subnet, AddressedDevice Device)> _devices = [];

    /// <summary>Those of a studied design; none without a plan of addresses.</summary>
    public DeviceNames(PaperInput input)
    {
        foreach (var subnet in input.Results.Addressing?.Subnets ?? [])
        {
            foreach (var device in subnet.Devices)
                _devices[device.Id] = (subnet, device);
        }
    }

    /// <summary>The address; empty when there is none.</summary>
    public string Address(string id) => _devices.GetValueOrDefault(id).Device?.Address?.ToString() ?? "";

    /// <summary>The name; empty when there is none.</summary>
    public string Name(string id) => _devices.GetValueOrDefault(id).Device?.Name ?? "";

    /// <summary>The VLAN; empty when there is none.</summary>
    public string Vlan(string id) => _devices.GetValueOrDefault(id).Subnet?.Subnet.Vlan is { } vlan ? Domain.Shown.Numbers.Show(vlan) : "";
}
