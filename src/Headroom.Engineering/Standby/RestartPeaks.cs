using Headroom.Engineering.Power;

namespace Headroom.Engineering.Standby;

/// <summary>What ports take together while devices start, moment by moment.</summary>
public static class RestartPeaks
{
    /// <summary>The most that is taken, and when.</summary>
    /// <param name="ports">The ports.</param>
    /// <returns>The peak; a port whose input charges takes the most inrush that its class allows for that time.</returns>
    public static RestartPeak Of(IReadOnlyList<RestartPort> ports)
    {
        var (moments, changes, spikes, whole) = Changes(ports);
        var (sum, peak) = (0.0, new RestartPeak(0, 0, whole));
        for (var i = 0; i < moments.Length; i++)
        {
            var spike = sum + spikes[changes[i].Spike];
            sum += changes[i].Watts;
            if (Math.Max(sum, spike) > peak.Watts)
                peak = new(Math.Max(sum, spike), moments[i], whole);
        }

        return peak;
    }

    /// <summary>What is taken from each moment on, charging of inputs left out.</summary>
    /// <param name="ports">The ports.</param>
    /// <returns>The steps, by time.</returns>
    public static IReadOnlyList<RestartStep> Steps(IReadOnlyList<RestartPort> ports)
    {
        var (moments, changes, _, _) = Changes(ports);
        var (sum, steps) = (0.0, new List<RestartStep>(moments.Length));
        for (var i = 0; i < moments.Length; i++)
        {
            sum += changes[i].Watts;
            steps.Add(new(moments[i], sum));
        }

        return steps;
    }

    /// <summary>How long the input of a device charges at the least current [s]; the longest allowed when it is not known.</summary>
    internal static double InrushSeconds(PoweredPort port) =>
        port.Endpoint.Model.Power?.InputCapacitance is { } farads && port.SourceVolts is { } volts && port.GrantedClass is { } granted
            ? Math.Min(StartUp.InrushSecondsMax, StartUp.ChargeSeconds(farads.Value.Value, volts, StartUp.InrushAmperes(granted).Least))
            : StartUp.DeviceInrushSeconds;

    private static double InrushWatts(PoweredPort port) =>
        port.SourceVolts is { } volts && port.GrantedClass is { } granted ? volts * StartUp.InrushAmperes(granted).Most : 0;

    // Index 0 of the spikes is none: where a device settles nothing charges.
    private static (double[] Moments, (double Watts, int Spike)[] Changes, double[] Spikes, bool Whole) Changes(IReadOnlyList<RestartPort> ports)
    {
        var up = 0;
        foreach (var port in ports)
            up += port.Dark ? 0 : 1;
        var (moments, changes, spikes, at, whole) = (new double[2 * up], new (double, int)[2 * up], new double[up + 1], 0, true);
        foreach (var port in ports)
        {
            if (port.Dark)
                continue;
            var (start, later) = (port.Port.In(PowerState.Start).PortWatts, port.Port.In(PowerState.Typical).PortWatts);
            whole &= start is not null && later is not null;
            spikes[at / 2 + 1] = InrushWatts(port.Port);
            (moments[at], changes[at]) = (port.OnSeconds, (start ?? 0, at / 2 + 1));
            (moments[at + 1], changes[at + 1]) = (port.UpSeconds, ((later ?? 0) - (start ?? 0), 0));
            at += 2;
        }

        Array.Sort(moments, changes);
        return (moments, changes, spikes, whole);
    }
}
