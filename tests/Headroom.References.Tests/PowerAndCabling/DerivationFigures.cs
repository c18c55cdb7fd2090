using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

/// <summary>Device power worked out from source power, voltage and channel of the class, and back again.</summary>
internal static class DerivationFigures
{
    private const string Inverse = "inverse from the published device power: ";

    // Classes of rows DV-1 to DV-8; DV-9 is class 5 of a dual signature.
    private static readonly int[] Classes = [3, 1, 2, 4, 5, 6, 7, 8];

    internal static Figure Work(Printed printed)
    {
        var (watts, volts, ohms) = Given(printed.Id[^1] - '0');
        var point = ConstantPowerLoad.FromSource(volts, ohms, watts)!.Value;
        return printed.What switch
        {
            "source power" => watts,
            "source voltage, least" => volts,
            "channel" => ohms,
            "current" => point.Amperes,
            "loss" => point.LostWatts,
            "device voltage" => point.LoadVolts,
            "loss, share of source power" => 100 * point.LostWatts / point.SourceWatts,
            Inverse + "voltage" => Back(printed, volts, ohms).LoadVolts,
            Inverse + "current" => Back(printed, volts, ohms).Amperes,
            var what when what.StartsWith("device power", StringComparison.Ordinal) => point.LoadWatts,
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static (double Watts, double Volts, double Ohms) Given(int row)
    {
        if (row == 9)
            return (PoeClasses.OfDual(5).SourceWatts, PoeClasses.OfDual(5).SourceVoltsMin, PoeTypes.Of(PoeType.Type4).ChannelOhmsPerPairset);
        var cls = PoeClasses.Of(Classes[row - 1]);
        return (cls.SourceWatts, cls.SourceVoltsMin, cls.ChannelOhms);
    }

    private static OperatingPoint Back(Printed printed, double volts, double ohms)
    {
        var watts = printed.Id == "DV-1" ? PoeClasses.FirstEditionDeviceWatts : PoeClasses.DeviceWatts(Classes[printed.Id[^1] - '1']);
        return ConstantPowerLoad.Solve(volts, ohms, watts)!.Value;
    }
}
