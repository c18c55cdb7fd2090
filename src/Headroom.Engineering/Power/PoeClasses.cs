namespace Headroom.Engineering.Power;

/// <summary>The power classes of IEEE 802.3 as tables.</summary>
/// <remarks>
/// Source: IEEE 802.3, Tables 33-7, 33-9, 33-16, 33-18 and 145-11 to 145-14, 145-26 to 145-29. The powers were seen in secondary
/// documents; table numbers, class events, the dual-signature table and 6.7 W and 14.0 W at types 3 and 4 are from memory.
/// </remarks>
public static class PoeClasses
{
    /// <summary>Most power at a class 0 or 3 device in the first edition [W]; later editions print 13.0. Source: IEEE 802.3af, seen in secondary documents.</summary>
    public const double FirstEditionDeviceWatts = 12.95;

    /// <summary>Single-signature classes, 0 to 8 in order.</summary>
    public static IReadOnlyList<PoeClass> Single { get; } =
    [
        new(0, 15.4, 14.0, 13.0, SourceVoltsMin: 44, DeviceVoltsMin: 37.0, ChannelOhms: 20, Pairs: 2, 1, 1, 0, 0),
        new(1, 4.0, 4.0, 3.84, SourceVoltsMin: 44, DeviceVoltsMin: 42.1, ChannelOhms: 20, Pairs: 2, 1, 1, 1, 1),
        new(2, 7.0, 6.7, 6.49, SourceVoltsMin: 44, DeviceVoltsMin: 40.8, ChannelOhms: 20, Pairs: 2, 1, 1, 2, 2),
        new(3, 15.4, 14.0, 13.0, SourceVoltsMin: 44, DeviceVoltsMin: 37.0, ChannelOhms: 20, Pairs: 2, 1, 1, 3, 3),
        new(4, 30, 30, 25.5, SourceVoltsMin: 50, DeviceVoltsMin: 42.5, ChannelOhms: 12.5, Pairs: 2, 2, 3, 4, 4),
        new(5, 45, 45, 40.0, SourceVoltsMin: 50, DeviceVoltsMin: 44.3, ChannelOhms: 6.25, Pairs: 4, 4, 4, 4, 0),
        new(6, 60, 60, 51.0, SourceVoltsMin: 50, DeviceVoltsMin: 42.5, ChannelOhms: 6.25, Pairs: 4, 4, 4, 4, 1),
        new(7, 75, 75, 62.0, SourceVoltsMin: 52, DeviceVoltsMin: 42.9, ChannelOhms: 6.25, Pairs: 4, 5, 5, 4, 2),
        new(8, 90, 90, 71.3, SourceVoltsMin: 52, DeviceVoltsMin: 41.1, ChannelOhms: 6.25, Pairs: 4, 5, 5, 4, 3),
    ];

    /// <summary>Dual-signature classes of one pairset, 1 to 5 in order.</summary>
    public static IReadOnlyList<DualSignatureClass> Dual { get; } =
    [
        new(1, 4, 3.84, 50), new(2, 6.7, 6.49, 50), new(3, 14, 13.0, 50), new(4, 30, 25.5, 50), new(5, 45, 35.6, 52),
    ];

    /// <summary>The row of a single-signature class.</summary>
    /// <param name="cls">Class, 0 to 8.</param>
    public static PoeClass Of(int cls)
    {
        Require.Between(0, 8, cls);
        return Single[cls];
    }

    /// <summary>The row of a dual-signature class, for one pairset. A budget adds the two pairsets.</summary>
    /// <param name="cls">Class of the pairset, 1 to 5.</param>
    public static DualSignatureClass OfDual(int cls)
    {
        Require.Between(1, 5, cls);
        return Dual[cls - 1];
    }

    /// <summary>Power that a source keeps for a class [W].</summary>
    /// <param name="cls">Class granted, 0 to 8.</param>
    /// <param name="type3Or4">Whether to use the lower figures of type 3 and 4 sources (6.7 W, 14.0 W; unconfirmed).</param>
    public static double SourceWatts(int cls, bool type3Or4 = false) => type3Or4 ? Of(cls).SourceWattsType3Or4 : Of(cls).SourceWatts;

    /// <summary>Power that a source of a type keeps for a class [W].</summary>
    /// <param name="cls">Class granted, 0 to 8; not checked against the type: ask <see cref="ClassAssignment"/> first.</param>
    /// <param name="pse">Type of the source.</param>
    /// <remarks>Types 3 and 4 get 6.7 W for class 2 and 14.0 W for classes 0 and 3, from memory; widely printed tables say 7 and 15.4 there too.</remarks>
    public static double SourceWatts(int cls, PoeType pse) => SourceWatts(cls, IsType3Or4(pse));

    /// <summary>Most power at the connector of a device of a class [W].</summary>
    /// <param name="cls">Class granted, 0 to 8.</param>
    public static double DeviceWatts(int cls) => Of(cls).DeviceWatts;

    /// <summary>Least voltage that a device of a class must work with at full power [V].</summary>
    /// <param name="cls">Class granted, 0 to 8.</param>
    public static double LeastDeviceVolts(int cls) => Of(cls).DeviceVoltsMin;

    /// <summary>Whether a class needs all four pairs.</summary>
    /// <param name="cls">Class granted, 0 to 8.</param>
    public static bool FourPair(int cls) => Of(cls).Pairs == 4;

    /// <summary>Whether a source of a type may put a class on all four pairs.</summary>
    /// <param name="cls">Class granted, 0 to 8.</param>
    /// <param name="pse">Type of the source.</param>
    public static bool FourPairAllowed(int cls, PoeType pse) => FourPair(cls) || (cls >= 1 && IsType3Or4(pse));

    /// <summary>Types of device that show a class.</summary>
    /// <param name="cls">Class that the device asks for, 0 to 8.</param>
    public static IReadOnlyList<PoeType> DeviceTypes(int cls)
    {
        Require.Between(0, 8, cls);
        return cls switch
        {
            0 => [PoeType.Type1],
            <= 3 => [PoeType.Type1, PoeType.Type3],
            4 => [PoeType.Type2, PoeType.Type3],
            <= 6 => [PoeType.Type3],
            _ => [PoeType.Type4],
        };
    }

    /// <summary>Loop resistance that the standard reckons with for a class [Ω]: 20 for 0 to 3, 12.5 for 4, 6.25 on four pairs.</summary>
    /// <param name="cls">Class granted, 0 to 8.</param>
    public static double ChannelOhms(int cls) => Of(cls).ChannelOhms;

    /// <summary>Loop resistance that a source of a type reckons with for a class [Ω]; types 3 and 4 take 12.5 for classes 0 to 3.</summary>
    /// <param name="cls">Class granted, 0 to 8.</param>
    /// <param name="pse">Type of the source.</param>
    public static double ChannelOhms(int cls, PoeType pse) =>
        IsType3Or4(pse) ? Math.Min(ChannelOhms(cls), PoeTypes.Of(pse).ChannelOhmsPerPairset) : ChannelOhms(cls);

    /// <summary>Least voltage that a source of a type holds for a class [V]; types 3 and 4 hold 50 for classes 0 to 3.</summary>
    /// <param name="cls">Class granted, 0 to 8.</param>
    /// <param name="pse">Type of the source.</param>
    public static double LeastSourceVolts(int cls, PoeType pse) =>
        IsType3Or4(pse) ? Math.Max(Of(cls).SourceVoltsMin, PoeTypes.Of(PoeType.Type3).SourceVoltsMin) : Of(cls).SourceVoltsMin;

    private static bool IsType3Or4(PoeType pse) => pse >= PoeType.Type3;
}
