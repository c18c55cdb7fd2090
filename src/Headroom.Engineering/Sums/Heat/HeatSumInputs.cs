using Headroom.Domain.Quantities;
using Headroom.Engineering.Airflow;

namespace Headroom.Engineering.Sums.Heat;

/// <summary>The inputs that the sums of heat and air share.</summary>
internal static class HeatSumInputs
{
    /// <summary>Seconds of an hour: flows are told by the hour and worked out by the second.</summary>
    public const double SecondsPerHour = 3600;

    /// <summary>Heat.</summary>
    public static QuantityInput Warmth { get; } = new("heat", "watts left in the air, without those that leave on cables", Watts.Units, new(0.1, 20_000, "W"));

    /// <summary>Rise.</summary>
    public static QuantityInput Rise { get; } = new("rise", "by how much the air may grow warmer", Kelvins.Units, new(0.5, 60, "K"));

    /// <summary>The air around.</summary>
    public static QuantityInput Around { get; } = new("around", "air around it", Celsius.Units, new(-40, 60, "°C")) { Default = "25 C", DefaultWhy = "a warm room" };

    /// <summary>Height above the sea.</summary>
    public static QuantityInput Altitude { get; } = new("altitude", "height above the sea", Metres.Units, new(0, 5000, "m")) { Default = "0 m", DefaultWhy = "at the sea; up to 500 m it matters little" };

    /// <summary>Flows of a fan curve.</summary>
    public static QuantityInput Flows(string name, string meaning) => new(name, meaning, CubicMetresPerHour.Units, new(0, 5000, "m3/h")) { IsList = true, Count = (2, 30), ListExample = "0, 6, 11 m3/h" };

    /// <summary>Pressures of a fan curve.</summary>
    public static QuantityInput Pressures(string name, string meaning) => new(name, meaning, Pascals.Units, new(0, 5000, "Pa")) { IsList = true, Count = (2, 30), ListExample = "34, 22, 0 Pa" };

    /// <summary>The curve of two lists; null where it cannot be one.</summary>
    public static FanCurve? Curve(IReadOnlyList<double> flows, IReadOnlyList<double> pressures)
    {
        if (flows.Count != pressures.Count)
            return null;
        for (var i = 1; i < flows.Count; i++)
        {
            if (flows[i] <= flows[i - 1] || pressures[i] > pressures[i - 1])
                return null;
        }

        return new([.. flows.Select(flow => flow / SecondsPerHour)], pressures);
    }
}
