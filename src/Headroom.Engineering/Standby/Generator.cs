namespace Headroom.Engineering.Standby;

/// <summary>How long a generator runs.</summary>
public static class Generator
{
    /// <summary>Time on a tank [h].</summary>
    /// <param name="litres">Fuel that can be used [L]; 0 or more.</param>
    /// <param name="litresPerKilowattHour">What it burns [L/kWh]; above 0. Worse at part load.</param>
    /// <param name="watts">The load [W]; above 0.</param>
    /// <returns>Time [h].</returns>
    /// <remarks>Source: balance of fuel.</remarks>
    public static double Hours(double litres, double litresPerKilowattHour, double watts)
    {
        Require.AtLeast(0, litres, "L");
        Require.Above0(litresPerKilowattHour, "L/kWh");
        Require.Above0(watts, "W");
        return litres / (litresPerKilowattHour * watts / 1000);
    }
}
