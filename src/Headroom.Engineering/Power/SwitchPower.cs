using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>The watts of one switch: every state under its own setting, and what its supply takes and leaves.</summary>
/// <param name="Switch">The switch.</param>
/// <param name="Ports">All its ports on which an endpoint for cable power hangs, faulty ones included.</param>
/// <param name="Counter">Counts under any setting.</param>
/// <param name="Setting">Its own setting.</param>
/// <param name="BudgetWatts">What its supply leaves for the ports [W]; null when not known.</param>
/// <param name="States">Its own setting in every state.</param>
/// <param name="Worst">The state that asks most.</param>
/// <param name="Supply">What its supply takes and leaves.</param>
public sealed record SwitchPower(
    BoundSwitch Switch,
    IReadOnlyList<PoweredPort> Ports,
    SwitchCounter Counter,
    WholeSetting Setting,
    double? BudgetWatts,
    IReadOnlyList<StateAccount> States,
    StateAccount Worst,
    SupplyFigures Supply)
{
    private SettingAdvisor? _advisor;

    /// <summary>Finds settings that mend a shortage; what it found for a reserve is kept.</summary>
    internal SettingAdvisor AdvisorFor(Reserve reserve) => _advisor?.Reserve == reserve ? _advisor : _advisor = new SettingAdvisor(this, reserve);

    /// <summary>What its supply takes and leaves when the ports give so much.</summary>
    /// <param name="portWatts">What all ports give together [W]; 0 or more; null when not known.</param>
    /// <returns>The point; null when something is not known.</returns>
    public SupplyPoint? SupplyAt(double? portWatts) => SupplySums.At(Switch, portWatts);

    /// <summary>What is set aside for a port that comes up.</summary>
    /// <param name="port">The port.</param>
    /// <returns>The watts [W]; null when they hang on something nobody knows.</returns>
    public double? StartReserve(PoweredPort port) => PortReserve.Starting(port, Setting);

    /// <summary>What is set aside for a port once it runs, in an ordinary hour.</summary>
    /// <param name="port">The port.</param>
    /// <returns>The watts [W]; null when they hang on something nobody knows.</returns>
    public double? SettledReserve(PoweredPort port) => PortReserve.Running(port, Setting, PowerState.Typical);

    /// <summary>What one port asks in the state that carries the verdict.</summary>
    /// <param name="port">The port.</param>
    /// <returns>The watts [W]; null when they hang on something nobody knows.</returns>
    internal double? AskOf(PoweredPort port) => Worst.State == PowerState.Start
        ? PortReserve.Starting(port, Setting)
        : Counter.AskOf(port, Setting, Worst.State);
}
