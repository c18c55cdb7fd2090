using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class TypeFigures
{
    internal static Figure Work(Printed printed) => Figure(PoeTypes.All[printed.Id[^1] - '1'], printed);

    private static Figure Figure(PoeTypeLimits limits, Printed printed) => printed.What switch
    {
        "fewest pairs" => limits.LeastPairs,
        "most pairs" => limits.MostPairs,
        "source voltage, least" => limits.SourceVoltsMin,
        "source voltage, most" => limits.SourceVoltsMax,
        "device voltage, least" => limits.DeviceVoltsMin,
        "current per pairset" => limits.AmperesPerPairset,
        "current, total" => limits.MostAmperes,
        "channel per pairset" => limits.ChannelOhmsPerPairset,
        "channel on four pairs" => limits.ChannelOhms,
        "source power, most" => limits.MostSourceWatts,
        "source power, ceiling" => limits.CeilingWatts,
        _ => PrintedTables.Nothing(printed),
    };
}
