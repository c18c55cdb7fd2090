namespace Headroom.Engineering.Airflow;

/// <summary>A path of air whose loss grows with the square of the flow: grilles, gaps, the inside of a case.</summary>
public static class AirPath
{
    /// <summary>Where a fan meets a path.</summary>
    /// <param name="curve">The fan's curve.</param>
    /// <param name="resistance">Loss of the path over the square of the flow [Pa/(m³/s)²]; 0 or more.</param>
    /// <returns>The point; free air where the path takes nothing.</returns>
    /// <remarks>Source: fan(q) = k q², solved on each straight piece of the curve.</remarks>
    public static WorkingPoint Meet(FanCurve curve, double resistance)
    {
        Require.AtLeast(0, resistance, "Pa/(m³/s)²");
        var (flows, pressures) = (curve.Flows, curve.Pressures);
        for (var i = 1; i < flows.Count; i++)
        {
            if (resistance * flows[i] * flows[i] < pressures[i])
                continue;
            var slope = (pressures[i] - pressures[i - 1]) / (flows[i] - flows[i - 1]);
            var flow = Crossing(resistance, slope, pressures[i - 1] - slope * flows[i - 1]);
            // A path that takes more than the fan gives at its least flow stands before the curve: the first pressure goes on to no flow.
            if (flow < flows[i - 1])
                flow = resistance > 0 ? Math.Sqrt(pressures[0] / resistance) : flows[0];
            return new(flow, resistance * flow * flow);
        }

        return new(curve.FreeFlow, curve.Pressures[^1]);
    }

    /// <summary>What a path takes at a flow.</summary>
    /// <param name="resistance">Loss of the path over the square of the flow [Pa/(m³/s)²]; 0 or more.</param>
    /// <param name="flow">The flow [m³/s]; 0 or more.</param>
    /// <returns>The pressure [Pa].</returns>
    /// <remarks>Source: k q², as of all losses of turbulent flow.</remarks>
    public static double Loss(double resistance, double flow) => resistance * flow * flow;

    /// <summary>The resistance of a path that takes a flow from a fan.</summary>
    /// <param name="curve">The fan's curve.</param>
    /// <param name="flow">The flow that was read or declared [m³/s]; above 0.</param>
    /// <returns>The resistance [Pa/(m³/s)²]; null when the fan does not reach the flow even in free air.</returns>
    /// <remarks>Source: k = fan(q) / q².</remarks>
    public static double? ResistanceOf(FanCurve curve, double flow)
    {
        Require.Above0(flow, "m³/s");
        return flow > curve.FreeFlow ? null : curve.PressureAt(flow) / (flow * flow);
    }

    /// <summary>The speed at which a fan holds a flow through a path.</summary>
    /// <param name="curve">The fan's curve at full speed.</param>
    /// <param name="resistance">Loss of the path over the square of the flow [Pa/(m³/s)²]; 0 or more.</param>
    /// <param name="flow">The flow wanted [m³/s]; above 0.</param>
    /// <returns>Speed / full speed [1]; above 1 means it cannot.</returns>
    /// <remarks>Source: affinity laws: on one and the same path flow goes with the speed.</remarks>
    public static double SpeedFor(FanCurve curve, double resistance, double flow)
    {
        Require.Above0(flow, "m³/s");
        return flow / Meet(curve, resistance).Flow;
    }

    // The positive root of k q² − slope q − start = 0, slope not above 0.
    private static double Crossing(double k, double slope, double start)
    {
        var root = Math.Sqrt(slope * slope + 4 * k * start);
        return -slope + root > 0 ? 2 * start / (-slope + root) : 0;
    }
}
