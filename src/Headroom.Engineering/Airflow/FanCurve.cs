namespace Headroom.Engineering.Airflow;

/// <summary>Static pressure of a fan over its flow at one speed, straight between its points: from no flow to free air.</summary>
public sealed class FanCurve
{
    private readonly double[] _flows;
    private readonly double[] _pressures;

    /// <summary>Makes a curve.</summary>
    /// <param name="flows">Flow of each point [m³/s], rising from 0 or more.</param>
    /// <param name="pressures">Static pressure of each [Pa], never rising; the last is that of free air.</param>
    /// <exception cref="ArgumentException">Fewer than two points, flows that do not rise, or pressures that rise.</exception>
    public FanCurve(IReadOnlyList<double> flows, IReadOnlyList<double> pressures)
    {
        if (flows.Count < 2 || flows.Count != pressures.Count)
            throw new ArgumentException($"A curve has two points or more, each with flow and pressure; {flows.Count} and {pressures.Count} were given.", nameof(flows));
        for (var i = 0; i < flows.Count; i++)
        {
            Require.AtLeast(0, flows[i], "m³/s");
            Require.AtLeast(0, pressures[i], "Pa");
            if (i > 0 && (flows[i] <= flows[i - 1] || pressures[i] > pressures[i - 1]))
                throw new ArgumentException($"Point {i + 1} of the curve does not lie at more flow and no more pressure than the one before it: a curve that rises is refused.", nameof(pressures));
        }

        (_flows, _pressures) = ([.. flows], [.. pressures]);
    }

    /// <summary>Flow of each point [m³/s].</summary>
    public IReadOnlyList<double> Flows => _flows;

    /// <summary>Pressure of each point [Pa].</summary>
    public IReadOnlyList<double> Pressures => _pressures;

    /// <summary>Flow in free air [m³/s].</summary>
    public double FreeFlow => _flows[^1];

    /// <summary>Pressure at a flow.</summary>
    /// <param name="flow">The flow [m³/s]; 0 or more.</param>
    /// <returns>The pressure [Pa]; that of the ends outside the curve.</returns>
    /// <remarks>Source: straight lines between the printed points.</remarks>
    public double PressureAt(double flow)
    {
        if (flow <= _flows[0])
            return _pressures[0];
        for (var i = 1; i < _flows.Length; i++)
        {
            if (flow <= _flows[i])
                return _pressures[i - 1] + (_pressures[i] - _pressures[i - 1]) * (flow - _flows[i - 1]) / (_flows[i] - _flows[i - 1]);
        }

        return _pressures[^1];
    }

    /// <summary>The curve at another speed.</summary>
    /// <param name="ratio">New speed / old speed [1]; above 0.</param>
    /// <returns>The curve.</returns>
    /// <remarks>Source: affinity laws of fans: flow by n, pressure by n².</remarks>
    public FanCurve AtSpeed(double ratio)
    {
        Require.Above0(ratio, "");
        return Scaled(ratio, ratio * ratio);
    }

    /// <summary>Several alike side by side: flows add at equal pressure.</summary>
    /// <param name="count">How many; 1 or more.</param>
    /// <returns>The curve of all together.</returns>
    /// <remarks>Source: continuity. One that stands still without a flap lets air back and is no fan less but worse.</remarks>
    public FanCurve Parallel(int count)
    {
        Require.Between(1, 1000, count);
        return Scaled(count, 1);
    }

    /// <summary>Several alike one behind the other: pressures add at equal flow.</summary>
    /// <param name="count">How many; 1 or more.</param>
    /// <returns>The curve of all together.</returns>
    /// <remarks>Source: pressures along one path add.</remarks>
    public FanCurve Series(int count)
    {
        Require.Between(1, 1000, count);
        return Scaled(1, count);
    }

    /// <summary>The curve in air of another density, at the same speed.</summary>
    /// <param name="ratio">Density there / density of the curve [1]; above 0.</param>
    /// <returns>The curve.</returns>
    /// <remarks>Source: affinity laws of fans: the same volume, pressure by density.</remarks>
    public FanCurve InAir(double ratio)
    {
        Require.Above0(ratio, "");
        return Scaled(1, ratio);
    }

    /// <summary>The curve with its pressure at every flow times a share, as another fan of the same free flow has it.</summary>
    /// <param name="share">The share [1]; above 0.</param>
    /// <returns>The curve.</returns>
    /// <remarks>Source: none, a way to compare two fans.</remarks>
    public FanCurve WithPressure(double share)
    {
        Require.Above0(share, "");
        return Scaled(1, share);
    }

    private FanCurve Scaled(double flow, double pressure) =>
        new(Array.ConvertAll(_flows, q => q * flow), Array.ConvertAll(_pressures, p => p * pressure));
}
