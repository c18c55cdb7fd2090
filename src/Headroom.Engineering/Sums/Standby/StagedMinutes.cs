using Headroom.Domain.Quantities;
using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Sums.Standby;

/// <summary>How long a battery holds a load that changes in stages.</summary>
internal static class StagedMinutes
{
    private static readonly QuantityInput Loads = new("loads", "of one block, stage by stage, age and cold counted in", Watts.Units, new(0.1, 20_000, "W")) { IsList = true, Count = (1, 10), ListExample = "60 W, 30 W" };
    private static readonly QuantityInput From = new("from", "when each begins, the first at 0", Seconds.Units, new(0, 10_000, "min")) { IsList = true, Count = (1, 10), ListExample = "0 min, 10 min" };

    private static readonly SumOutput Smaller = new("minutes", "min", "the smaller of both methods");
    private static readonly SumOutput Used = new("by-share-used", "min", "by the share used");
    private static readonly SumOutput Sections = new("by-sections", "min", "by sections");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "staged-minutes",
        Discipline = StandbySums.Discipline,
        Answers = "how long does a battery hold when some of the load is switched off on the way?",
        Inputs = [Loads, From, TableInputs.RowWatts, TableInputs.RowTimes],
        Outputs = [Smaller, Used, Sections],
        Formula = "sum of Δt / T(P) = 1; sum of (P_i − P_i−1) / P_w(T − t_i−1) = 1; the smaller T counts",
        Source = "share used; section method of IEEE Std 485 (Hoxie), from memory",
        Example = "loads 74 W, 31 W from 0 min, 12 min row-watts 297 W, 103 W, 62 W, 35.7 W, 16.3 W row-times 5 min, 30 min, 60 min, 120 min, 300 min",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        if (TableInputs.Read(given, out var reason) is not { } table)
            return Refused(reason);
        var (loads, from) = (given.All(Loads), given.All(From));
        if (loads.Count != from.Count || from[0] != 0)
            return Refused("every load needs the moment from which it counts, the first 0 min");
        var stages = new LoadStage[loads.Count];
        for (var i = 0; i < stages.Length; i++)
        {
            if (i > 0 && from[i] < from[i - 1])
                return Refused("the stages must follow one another in time");
            stages[i] = new(from[i], loads[i]);
        }

        if (StagedRuntime.ByShareUsed(table, stages) is not { } used || StagedRuntime.BySections(table, stages) is not { } sections)
            return Refused($"a stage is heavier than the {Words.Of(table.MostWatts)} W the table goes up to");
        var minutes = Math.Min(used, sections) / 60;
        return new SumAnswer($"It holds {new Told(minutes, "min")}.", [Smaller.Is(minutes), Used.Is(used / 60), Sections.Is(sections / 60)],
        [
            new("by share used", "stage by stage, Δt over the time the stage alone would last", used / 60, "min"),
            new("by sections", "every change asks for a battery of its own to the end", sections / 60, "min"),
        ]) { Notes = [$"Neither method was held against a measured discharge; where the load falls the share used is the cautious one, where it rises the sections are."] };
    }

    private static SumAnswer Refused(string reason) => new($"That cannot be worked out: {reason}.", [], []) { Holds = false };
}
