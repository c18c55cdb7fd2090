using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>The watts of one injector or midspan.</summary>
/// <param name="Injector">The injector.</param>
/// <param name="Ports">Its ports on which an endpoint for cable power hangs.</param>
/// <param name="BudgetWatts">What it gives to all its ports together [W]; null when not known.</param>
/// <param name="State">The state in which its ports draw most together.</param>
/// <param name="DemandWatts">What they draw then, losses of the runs included, the known part where some is not known [W].</param>
/// <param name="Amperes">The current of all ports together then, the known part likewise [A].</param>
/// <param name="Known">How many ports are known.</param>
public sealed record InjectorPower(
    BoundInjector Injector,
    IReadOnlyList<PoweredPort> Ports,
    double? BudgetWatts,
    PowerState State,
    double DemandWatts,
    double Amperes,
    int Known)
{
    /// <summary>The ports whose devices take anything: one that a fault keeps dark asks for nothing.</summary>
    public IReadOnlyList<PoweredPort> Asking { get; } = [.. Ports.Where(port => port.Fault is PortFault.None or PortFault.TooManyVolts)];
}
