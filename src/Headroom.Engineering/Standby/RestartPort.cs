using Headroom.Engineering.Power;

namespace Headroom.Engineering.Standby;

/// <summary>One port when the mains comes back.</summary>
/// <param name="Port">The port.</param>
/// <param name="Wave">In which wave it comes up, from 1; 0 when it stays dark.</param>
/// <param name="OnSeconds">When it has power, from the mains coming back [s]; 0 when it stays dark.</param>
/// <param name="UpSeconds">When its device is of use [s]; not before <paramref name="OnSeconds"/>.</param>
/// <param name="OnKnown">False when something before it is not known: it has power then or later.</param>
/// <param name="UpKnown">False when something before it or its own start is not known: it is of use then or later.</param>
public sealed record RestartPort(PoweredPort Port, int Wave, double OnSeconds, double UpSeconds, bool OnKnown, bool UpKnown)
{
    /// <summary>True when it never gets power.</summary>
    public bool Dark => Wave == 0;
}
