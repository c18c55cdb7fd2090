namespace Headroom.Engineering.Standby;

/// <summary>How a battery is filled again.</summary>
public static class Recharging
{
    /// <summary>What is put in for what was taken out of a lead battery [1]. Source: IEEE Std 946, from memory, 1.1; 1.15 seen in a handbook.</summary>
    public const double LeadFactor = 1.15;

    /// <summary>The slow last part of charging a sealed lead battery, least and most [h]: common practice, no source.</summary>
    public static (double Least, double Most) TaperHours => (3, 6);

    /// <summary>Current of a charger that carries a load and fills a battery [A].</summary>
    /// <param name="loadAmperes">Direct current of the load [A]; 0 or more.</param>
    /// <param name="removedAmpereHours">Charge to put back [Ah]; 0 or more.</param>
    /// <param name="hours">In what time [h]; above 0.</param>
    /// <param name="factor">What is put in for what was taken out [1]; 1 or more.</param>
    /// <returns>Current [A], I + k Ah / H.</returns>
    /// <remarks>Source: IEEE Std 946, from memory; a worked example was seen in a handbook.</remarks>
    public static double ChargerAmperes(double loadAmperes, double removedAmpereHours, double hours, double factor = LeadFactor)
    {
        Require.AtLeast(0, loadAmperes, "A");
        Require.AtLeast(0, removedAmpereHours, "Ah");
        Require.Above0(hours, "h");
        Require.AtLeast(1, factor, "as a factor");
        return loadAmperes + factor * removedAmpereHours / hours;
    }

    /// <summary>Time of the bulk of a charge [h]; the taper comes on top.</summary>
    /// <param name="removedAmpereHours">Charge to put back [Ah]; 0 or more.</param>
    /// <param name="amperes">Charging current [A]; above 0.</param>
    /// <param name="factor">What is put in for what was taken out [1]; 1 or more.</param>
    /// <returns>Time [h].</returns>
    /// <remarks>Source: balance of charge.</remarks>
    public static double BulkHours(double removedAmpereHours, double amperes, double factor = LeadFactor)
    {
        Require.AtLeast(0, removedAmpereHours, "Ah");
        Require.Above0(amperes, "A");
        Require.AtLeast(1, factor, "as a factor");
        return factor * removedAmpereHours / amperes;
    }

    /// <summary>Time to put energy back at a power [s].</summary>
    /// <param name="removedJoules">Energy taken out [J]; 0 or more.</param>
    /// <param name="watts">What reaches the battery [W]; above 0.</param>
    /// <param name="factor">What is put in for what was taken out [1]; 1 or more.</param>
    /// <returns>Time [s]; the taper comes on top for lead.</returns>
    /// <remarks>Source: balance of energy.</remarks>
    public static double BulkSeconds(double removedJoules, double watts, double factor = LeadFactor)
    {
        Require.AtLeast(0, removedJoules, "J");
        Require.Above0(watts, "W");
        Require.AtLeast(1, factor, "as a factor");
        return factor * removedJoules / watts;
    }
}
