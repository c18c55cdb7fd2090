using Headroom.Domain.Addresses;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A part of the network that is kept apart from the others.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Vlan">Its number on the switches, 1 to 4094 (IEEE 802.1Q); null when not written.</param>
/// <param name="For">Kinds of endpoints that belong to it, and <c>units</c> for switches and standby supplies.</param>
/// <param name="In">Spaces whose endpoints belong to it; empty for all.</param>
/// <param name="MoreHosts">Devices that are not written down, such as those of staff; null when none.</param>
/// <param name="Visitors">Who comes and goes; null when nobody.</param>
/// <param name="Range">The range it has already, or is to have; null for the next free one.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Subnet(
    string Id,
    int? Vlan,
    IReadOnlyList<string> For,
    IReadOnlyList<string> In,
    int? MoreHosts,
    Visitors? Visitors,
    Given<Ip4Range>? Range,
    Place At)
{
    /// <summary>Kinds that can be written besides those of endpoints: what stands in the closet.</summary>
    public const string Units = "units";
}
