namespace Headroom.Engineering.Power;

/// <summary>How a source asks a device for its class.</summary>
/// <remarks>Source: IEEE 802.3, Tables 33-9, 33-10, 33-16 and 145-14; see each member for what was seen and what is from memory.</remarks>
public static class Classification
{
    /// <summary>Least classification voltage [V]. Source: IEEE 802.3, Table 33-10, seen in a secondary document.</summary>
    public const double VoltsMin = 15.5;

    /// <summary>Most classification voltage [V]. Source: IEEE 802.3, Table 33-10, seen in a secondary document.</summary>
    public const double VoltsMax = 20.5;

    /// <summary>Least current at which a source limits during classification [A]. Source: IEEE 802.3, Table 33-10, from memory.</summary>
    public const double LimitAmperesMin = 0.051;

    /// <summary>Most current at which a source limits during classification [A]. Source: IEEE 802.3, Table 33-10, seen in a secondary document.</summary>
    public const double LimitAmperesMax = 0.100;

    /// <summary>Least voltage between class events [V]. Source: IEEE 802.3, Table 33-10, from memory.</summary>
    public const double MarkVoltsMin = 7;

    /// <summary>Most voltage between class events [V]. Source: IEEE 802.3, Table 33-10, from memory.</summary>
    public const double MarkVoltsMax = 10;

    /// <summary>Least time between class events [s]. Source: IEEE 802.3, Table 33-10, from memory.</summary>
    public const double MarkSecondsMin = 0.006;

    /// <summary>Most time between class events [s]. Source: IEEE 802.3, Table 33-10, from memory.</summary>
    public const double MarkSecondsMax = 0.012;

    /// <summary>Least time of the first of two class events [s]. Source: IEEE 802.3, Table 33-10, from memory.</summary>
    public const double FirstEventSecondsMin = 0.006;

    /// <summary>Most time of the first of two class events [s]. Source: IEEE 802.3, Table 33-10, from memory.</summary>
    public const double FirstEventSecondsMax = 0.030;

    /// <summary>Least time of the long first event of a type 3 or 4 source [s]. Source: IEEE 802.3, Table 145-14, from memory.</summary>
    public const double LongEventSecondsMin = 0.088;

    /// <summary>Most time of the long first event of a type 3 or 4 source [s]. Source: IEEE 802.3, Table 145-14, from memory.</summary>
    public const double LongEventSecondsMax = 0.105;

    /// <summary>Least time of a later event of a type 3 or 4 source [s]. Source: IEEE 802.3, Table 145-14, from memory.</summary>
    public const double LaterEventSecondsMin = 0.006;

    /// <summary>Most time of a later event of a type 3 or 4 source [s]. Source: IEEE 802.3, Table 145-14, from memory.</summary>
    public const double LaterEventSecondsMax = 0.020;

    /// <summary>Least current of class 0 in a type 3 or 4 device [A]; 0 in older ones. Source: IEEE 802.3bt, seen in a secondary document.</summary>
    public const double Class0AmperesMinType3Or4 = 0.001;

    /// <summary>Currents of the class signatures, 0 to 4 in order. Source: IEEE 802.3, Tables 33-9 (seen in a secondary document) and 33-16 (classes 0 to 3 from memory).</summary>
    public static IReadOnlyList<ClassCurrent> Currents { get; } =
    [
        new(0, 0, 0.004, 0, 0.005),
        new(1, 0.009, 0.012, 0.008, 0.013),
        new(2, 0.017, 0.020, 0.016, 0.021),
        new(3, 0.026, 0.030, 0.025, 0.031),
        new(4, 0.036, 0.044, 0.035, 0.045),
    ];

    /// <summary>Class signatures that a source may read from a current.</summary>
    /// <param name="amperes">Current during a class event [A]; 0 or more.</param>
    /// <returns>One class where the standard fixes it, both neighbours in a gap, none above class 4.</returns>
    /// <remarks>Source: IEEE 802.3, Table 33-9, seen in a secondary document; the gaps from memory.</remarks>
    public static IReadOnlyList<int> MayRead(double amperes)
    {
        Require.AtLeast(0, amperes, "A");
        foreach (var row in Currents)
        {
            if (amperes < row.SourceAmperesMin)
                return [row.Class - 1, row.Class];
            if (amperes <= row.SourceAmperesMax)
                return [row.Class];
        }
        return [];
    }
}
