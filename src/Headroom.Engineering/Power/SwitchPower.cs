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
    /// <summary>Finds settings that mend a shortage; what it found is kept.</summary>
    internal SettingAdvisor? Advisor { get; private set; }

    /// <summary>The advisor for the reserve that is wanted.</summary>
    internal SettingAdvisor AdvisorFor(Reserve reserve) => Advisor ??= new SettingAdvisor(this, reserve);
}
