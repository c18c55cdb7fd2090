using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Binding;

/// <summary>A switch of a design with its model, the supply fitted and its whole power setting.</summary>
/// <param name="Placed">The switch as the design has it.</param>
/// <param name="Model">Its model.</param>
/// <param name="Supply">The supply fitted; null when the model has none.</param>
/// <param name="Setting">The setting: the model's way, as the design and the request change it.</param>
/// <param name="Space">The space it stands in, through its rack if need be; null when not said.</param>
public sealed record BoundSwitch(PlacedSwitch Placed, SwitchModel Model, SupplyModel? Supply, PowerSetting Setting, string? Space)
{
    /// <summary>The id people say.</summary>
    public string Id => Placed.Id;

    /// <summary>The group a port belongs to.</summary>
    /// <param name="port">The number on the port.</param>
    /// <returns>The group, or null when the model has no such port.</returns>
    public PortGroup? PortGroupOf(int port)
    {
        // Asked for every port of a site: without an enumerator.
        var groups = Model.Ports;
        for (var i = 0; i < groups.Count; i++)
        {
            if (port >= groups[i].First && port <= groups[i].Last)
                return groups[i];
        }

        return null;
    }

    /// <summary>The ports that can be powered, by type or passive voltage.</summary>
    public int PoweredPorts => Model.Ports.Where(group => group.Poe is not null || group.Passive is not null).Sum(group => group.Last - group.First + 1);

    /// <summary>Says whether passive voltage is on at a port.</summary>
    /// <param name="port">The number on the port.</param>
    /// <returns>True when it cannot be switched off there, or the design switches it on.</returns>
    public bool PassiveOn(int port) =>
        PortGroupOf(port)?.Passive is { } passive && (passive.AlwaysOn || Placed.PassivePorts?.Contains(port) == true);
}
