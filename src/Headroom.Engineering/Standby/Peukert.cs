namespace Headroom.Engineering.Standby;

/// <summary>A rough law for lead batteries of which no table is at hand; good to about 30 % within a decade of time.</summary>
public static class Peukert
{
    /// <summary>Time to empty at a constant current [h].</summary>
    /// <param name="ampereHours">Capacity at the rate [Ah]; above 0.</param>
    /// <param name="rateHours">The hours for which the capacity was declared [h]; above 0.</param>
    /// <param name="amperes">Current [A]; above 0.</param>
    /// <param name="exponent">The exponent [1]; 1 or more, 1.1 to 1.3 for sealed lead.</param>
    /// <returns>Time [h], H (C / (I H))^k.</returns>
    /// <remarks>Source: W. Peukert 1897 in the form that keeps the rate beside the capacity, from memory.</remarks>
    public static double Hours(double ampereHours, double rateHours, double amperes, double exponent)
    {
        Require.Above0(ampereHours, "Ah");
        Require.Above0(rateHours, "h");
        Require.Above0(amperes, "A");
        Require.AtLeast(1, exponent, "as an exponent");
        return rateHours * Math.Pow(ampereHours / (amperes * rateHours), exponent);
    }

    /// <summary>Time to empty where the capacity is told for one ampere [h].</summary>
    /// <param name="oneAmpereHours">Capacity at 1 A [Ah]; above 0.</param>
    /// <param name="amperes">Current [A]; above 0.</param>
    /// <param name="exponent">The exponent [1]; 1 or more.</param>
    /// <returns>Time [h], C / I^k.</returns>
    /// <remarks>Source: a tutorial on the law. Another convention than <see cref="Hours"/>: the capacity printed on a block is not the one for 1 A.</remarks>
    public static double HoursByOneAmpere(double oneAmpereHours, double amperes, double exponent)
    {
        Require.Above0(oneAmpereHours, "Ah");
        Require.Above0(amperes, "A");
        Require.AtLeast(1, exponent, "as an exponent");
        return oneAmpereHours / Math.Pow(amperes, exponent);
    }

    /// <summary>The exponent from two discharges [1].</summary>
    /// <param name="amperes">Current of the first [A]; above 0.</param>
    /// <param name="hours">Time of the first [h]; above 0.</param>
    /// <param name="otherAmperes">Current of the second, another one [A]; above 0.</param>
    /// <param name="otherHours">Time of the second [h]; above 0.</param>
    /// <returns>The exponent; null when both currents are the same.</returns>
    /// <remarks>Source: k = Δ ln t / Δ ln I, seen in the manual of a battery monitor.</remarks>
    public static double? Exponent(double amperes, double hours, double otherAmperes, double otherHours)
    {
        Require.Above0(amperes, "A");
        Require.Above0(hours, "h");
        Require.Above0(otherAmperes, "A");
        Require.Above0(otherHours, "h");
        return amperes == otherAmperes ? null : Math.Log(otherHours / hours) / Math.Log(amperes / otherAmperes);
    }
}
