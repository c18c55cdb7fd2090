namespace Headroom.Engineering.Standby;

/// <summary>The mains coming back after everything was off.</summary>
/// <param name="Units">Switches and injectors, in the order written.</param>
/// <param name="LineSeconds">When the line is there [s]; null when not known.</param>
public sealed record RestartResult(IReadOnlyList<UnitRestart> Units, double? LineSeconds)
{
    /// <summary>The port an endpoint hangs on.</summary>
    /// <param name="endpoint">The endpoint's id.</param>
    /// <returns>The port; null when it is fed by none.</returns>
    public RestartPort? PortOf(string endpoint)
    {
        foreach (var unit in Units)
        {
            foreach (var port in unit.Ports)
            {
                if (port.Port.Id == endpoint)
                    return port;
            }
        }

        return null;
    }

    /// <summary>The unit of an id.</summary>
    /// <param name="id">The id.</param>
    /// <returns>The unit; null when there is none.</returns>
    public UnitRestart? UnitOf(string id)
    {
        foreach (var unit in Units)
        {
            if (unit.Id == id)
                return unit;
        }

        return null;
    }
}
