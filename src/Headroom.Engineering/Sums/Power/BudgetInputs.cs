using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Sums.Power;

/// <summary>The inputs that the sums about a budget share, and the class that a draw comes to.</summary>
internal static class BudgetInputs
{
    /// <summary>What there is for all ports.</summary>
    public static QuantityInput Budget { get; } = new("budget", "watts the supply leaves for all ports", Watts.Units, new(1, 20_000, "W"));

    /// <summary>What the devices draw.</summary>
    public static QuantityInput Devices { get; } = new("devices", "what each draws at its connector, at its most", Watts.Units, new(0.01, 71.3, "W")) { IsList = true };

    /// <summary>The type of the ports.</summary>
    public static NumberInput PortType { get; } = new("type", "type of the ports in IEEE 802.3", new Bounds(1, 4))
    {
        Default = "2",
        DefaultWhy = "ports of 30 W are the commonest (common practice, no source)",
    };

    /// <summary>The type that a number means.</summary>
    public static PoeType TypeOf(SumGiven given) => (PoeType)((int)given[PortType] - 1);

    /// <summary>The answer where a device draws more than a port of the type gives any class; null where none does.</summary>
    public static SumAnswer? Beyond(SumGiven given, Sum sum)
    {
        var type = TypeOf(given);
        var most = PoeClasses.DeviceWatts(PoeTypes.Of(type).HighestClass);
        var draw = given.All(Devices).Max();
        return draw <= most ? null : new SumAnswer(
            $"It cannot be: a port of type {(int)type + 1} allows {new Told(most, "W")} at the device, and one of them draws {new Told(draw, "W")}.",
            [.. sum.Outputs.Select(output => output.Is(null))],
            []) { Holds = false };
    }

    /// <summary>The lowest class that allows a device a draw; null above what any class allows.</summary>
    public static PoeClass? ClassOf(double deviceWatts) => PoeClasses.Single.FirstOrDefault(row => row.Number > 0 && deviceWatts <= row.DeviceWatts);
}
