using Headroom.Engineering.Power;

namespace Headroom.Engineering.Standby;

/// <summary>One switch or injector when the mains comes back.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Switch">The switch; null for an injector.</param>
/// <param name="BootSeconds">When it serves its first port [s]; null when not known.</param>
/// <param name="Ports">Its ports, in the order in which they are served.</param>
/// <param name="Waves">In how many waves they come up; 0 when none does.</param>
/// <param name="Peak">The most that its ports take together.</param>
public sealed record UnitRestart(string Id, SwitchPower? Switch, double? BootSeconds, IReadOnlyList<RestartPort> Ports, int Waves, RestartPeak Peak)
{
    /// <summary>The ports that stay dark, in the order in which they would be served.</summary>
    public IReadOnlyList<RestartPort> Dark
    {
        get
        {
            var dark = new List<RestartPort>();
            foreach (var port in Ports)
            {
                if (port.Dark)
                    dark.Add(port);
            }

            return dark;
        }
    }

    /// <summary>What its supply gives at that moment [W]; null when not known or when it is an injector.</summary>
    public double? PeakSupplyWatts => Peak.Whole && Switch?.Supply is { BaseWatts: { } own } supply ? own + Peak.Watts / supply.PathEfficiency : null;
}
