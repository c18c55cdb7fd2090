using Headroom.Engineering.Standby;
using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests.Standby;

internal static class StageFigures
{
    // A law written as a table: straight in log-log, so that two rows hold all of it.
    private static readonly DischargeTable Law = new([3.6, 3600, 360_000], [Math.Pow(0.001, -1 / 1.2), 1, Math.Pow(100, -1 / 1.2)]);

    internal static Figure Work(Printed printed)
    {
        var (table, stages) = Given(printed);
        var seconds = printed.What.EndsWith("sections", StringComparison.Ordinal)
            ? StagedRuntime.BySections(table, stages)
            : StagedRuntime.ByShareUsed(table, stages);
        return seconds / (printed.Unit == "h" ? 3600 : 60);
    }

    private static (DischargeTable Table, LoadStage[] Stages) Given(Printed printed)
    {
        var n = PrintedNumbers.In(printed.What);
        switch (printed.Id)
        {
            case "1.6/6":
                return (Block.Usual, [new(0, n[0]), new(n[1] / 100 * Block.Usual.Seconds(n[0])!.Value, n[2])]);
            case "1.6/7":
                return (Law, [new(0, n[1]), new(n[2] * 3600, n[3])]);
            default:
                var stages = new List<LoadStage>();
                var from = 0.0;
                for (var i = 0; i < n.Length; i += 2)
                {
                    stages.Add(new(from, n[i]));
                    from += i + 1 < n.Length ? n[i + 1] * 60 : 0;
                }

                return (Block.Usual, [.. stages]);
        }
    }
}
