using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Sums.Standby;

/// <summary>How long a battery holds a load.</summary>
internal static class BatteryMinutes
{
    private static readonly QuantityInput Load = new("load", "at the output of the supply", Watts.Units, new(1, 20_000, "W"));
    private static readonly QuantityInput Efficiency = new("efficiency", "of the supply on battery", Share.Units, new(30, 100, "%")) { Default = "100 %", DefaultWhy = "the load is taken as it is at the battery" };
    private static readonly QuantityInput NoLoad = new("no-load", "what the converter draws with nothing connected", Watts.Units, new(0, 500, "W")) { Default = "0 W", DefaultWhy = "held in the efficiency" };
    private static readonly NumberInput Blocks = new("blocks", "how many blocks share it", new(1, 200)) { Default = "1", DefaultWhy = "one block" };
    private static readonly NumberInput Ageing = new("ageing", "factor for age: 1 new, 1.25 at the end of life", new(1, 3)) { IsWhole = false, Default = "1", DefaultWhy = "a new battery" };
    private static readonly QuantityInput Temperature = new("temperature", "of the battery", Celsius.Units, new(-3.8, 48.8, "°C")) { Default = "25 °C", DefaultWhy = "the temperature of the table" };

    private static readonly SumOutput Minutes = new("minutes", "min", "how long it holds");
    private static readonly SumOutput Block = new("block-watts", "W", "that count for one block");
    private static readonly SumOutput Battery = new("battery-watts", "W", "at the terminals of the battery");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "battery-minutes",
        Discipline = StandbySums.Discipline,
        Answers = "how long does a battery hold a load?",
        Inputs = [Load, Efficiency, NoLoad, Blocks, Ageing, Temperature, TableInputs.RowWatts, TableInputs.RowTimes],
        Outputs = [Minutes, Block, Battery],
        Formula = "P = (P0 + P_load / η) / blocks · K_cold · K_age; T between the rows in log-log",
        Source = "constant-power table of the block; factors of IEEE Std 485, from memory",
        Example = "load 86 W efficiency 87 % blocks 2 ageing 1.25 temperature 12 °C row-watts 297 W, 103 W, 62 W, 35.7 W row-times 5 min, 30 min, 60 min, 120 min",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        if (TableInputs.Read(given, out var reason) is not { } table)
            return new SumAnswer($"That is no table of a battery: {reason}.", [], []) { Holds = false };
        var battery = ConverterLoad.BatteryWatts(given[Load], given[Efficiency], given[NoLoad]);
        var cold = BatteryDerating.LeadTemperature(given[Temperature]) ?? 1;
        var block = ConverterLoad.BlockWatts(battery, (int)given[Blocks], cold * given[Ageing]);
        var steps = new List<WorkingStep>
        {
            new("P at the battery", $"{Words.Of(given[NoLoad])} W + {Words.Of(given[Load])} W / {Words.Of(given[Efficiency])}", battery, "W"),
            new("K_cold", $"at {Words.Of(given[Temperature])} °C, never below 1", cold, ""),
            new("P of one block", $"{Words.Of(battery)} W / {Words.Of(given[Blocks])} · {Words.Of(cold)} · {Words.Of(given[Ageing])}", block, "W"),
        };
        if (table.Seconds(block) is not { } seconds)
        {
            return new SumAnswer($"The table says nothing for {new Told(block, "W")} a block: it goes from {new Told(table.LeastWatts, "W")} to {new Told(table.MostWatts, "W")}, and beyond its ends nothing is guessed.", [Minutes.Is(null), Block.Is(block), Battery.Is(battery)], steps) { Holds = false };
        }

        steps.Add(new("T", "between the rows of the table, in log-log", seconds / 60, "min"));
        return new SumAnswer($"It holds {new Told(seconds / 60, "min")}.", [Minutes.Is(seconds / 60), Block.Is(block), Battery.Is(battery)], steps)
        {
            Notes = [$"Tables of two makers differ by a tenth; a battery of unknown age may hold half of it."],
            Cautions = [CautionTable.Battery],
        };
    }
}
