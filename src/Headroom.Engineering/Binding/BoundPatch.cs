using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Binding;

/// <summary>A port and what it belongs to.</summary>
/// <param name="What">The drop or endpoint on it.</param>
/// <param name="Switch">The switch; null when it is an injector's port.</param>
/// <param name="Injector">The injector; null when it is a switch's port.</param>
/// <param name="Port">The number of the port; 1 for an injector of one port.</param>
/// <param name="Assumed">True when nobody patched it and the first free port that suits was taken.</param>
public sealed record BoundPatch(string What, BoundSwitch? Switch, BoundInjector? Injector, int Port, bool Assumed)
{
    /// <summary>The id of the switch or injector.</summary>
    public string Unit => Switch?.Id ?? Injector!.Id;

    /// <summary>The port as people write it.</summary>
    public PortRef Ref => Switch is not null ? new(Switch.Id, Port) : new(Injector!.Id, Injector.Model.Ports > 1 ? Port : null);
}
