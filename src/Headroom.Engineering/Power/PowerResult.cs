using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Everything the power study worked out, every intermediate figure by name.</summary>
/// <param name="Bound">The design it was worked out for.</param>
/// <param name="Ports">Every endpoint for cable power that hangs on a port.</param>
/// <param name="Unserved">Endpoints for cable power for which no port is left, or of which nobody said where they are patched.</param>
/// <param name="LivePins">Equipment without need of cable power, or nothing known, on ports whose passive voltage is on.</param>
/// <param name="Switches">The watts of each switch.</param>
/// <param name="Injectors">The watts of each injector.</param>
public sealed record PowerResult(
    BoundDesign Bound,
    IReadOnlyList<PoweredPort> Ports,
    IReadOnlyList<BoundEndpoint> Unserved,
    IReadOnlyList<LivePin> LivePins,
    IReadOnlyList<SwitchPower> Switches,
    IReadOnlyList<InjectorPower> Injectors);
