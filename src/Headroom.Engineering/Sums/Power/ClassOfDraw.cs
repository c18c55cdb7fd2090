using Headroom.Domain.Quantities;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Sums.Power;

/// <summary>What class a device of a draw asks for.</summary>
internal static class ClassOfDraw
{
    private static readonly QuantityInput Draw = new("draw", "what the device draws at its connector, at its most", Watts.Units, new(0.01, 200, "W"));

    private static readonly SumOutput Class = new("class", "", "lowest class that allows it");
    private static readonly SumOutput Source = new("source-watts", "W", "watts a port keeps for the class");
    private static readonly SumOutput Device = new("device-watts", "W", "most the class allows at the device");
    private static readonly SumOutput Least = new("least-volts", "V", "least volts at the device at full power");
    private static readonly SumOutput Pairs = new("pairs", "", "pairs that carry power");
    private static readonly SumOutput Type = new("type", "", "lowest type of port that grants it");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "class-of-draw",
        Discipline = PowerSums.Discipline,
        Answers = "which class does a device of some watts need?",
        Inputs = [Draw],
        Outputs = [Class, Source, Device, Least, Pairs, Type],
        Formula = "the lowest class whose watts at the device are no less than the draw",
        Source = "IEEE Std 802.3, Tables 33-18 and 145-29 (seen in secondary documents)",
        Example = "draw 13.5 W",
        Work = given => Work(given[Draw]),
    };

    private static SumAnswer Work(double watts)
    {
        if (BudgetInputs.ClassOf(watts) is not { } row)
        {
            var highest = PoeClasses.Single[^1];
            return new SumAnswer(
                $"No class allows {new Told(watts, "W")}: class {highest.Number}, the highest, allows {new Told(highest.DeviceWatts, "W")} at the device.",
                [Class.Is(null), Source.Is(null), Device.Is(null), Least.Is(null), Pairs.Is(null), Type.Is(null)],
                []) { Holds = false };
        }

        var type = PoeTypes.All.First(type => type.HighestClass >= row.Number);
        return new SumAnswer(
            $"Class {row.Number}: it allows {new Told(row.DeviceWatts, "W")} at the device, and a port keeps {new Told(row.SourceWatts, "W")} for it.",
            [Class.Is(row.Number), Source.Is(row.SourceWatts), Device.Is(row.DeviceWatts), Least.Is(row.DeviceVoltsMin), Pairs.Is(row.Pairs), Type.Is(Number(type.Type))],
            [new("class", $"{Words.Of(watts)} W is above {Words.Of(Below(row))} W and at most {Words.Of(row.DeviceWatts)} W", row.Number, "")])
        {
            Notes = [$"A device says its class itself, and may say a higher one than its draw needs: its papers count."],
        };
    }

    private static double Below(PoeClass row) => row.Number == 1 ? 0 : PoeClasses.DeviceWatts(row.Number - 1);

    private static int Number(PoeType type) => (int)type + 1;
}
