using Headroom.Engineering.MeasuredDraws;
using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests.MeasuredDraws;

internal static class StateFigures
{
    private const double Step = 0.5;

    private static readonly DrawGrid Idle = DrawGrid.OfStates([(3, 0.7), (8, 0.3)], Step).Times(24);

    private static readonly DrawGrid Desk = DrawGrid.OfStates([(2, 0.9), (4.5, 0.1)], Step).Times(16).And(DrawGrid.OfStates([(5.5, 0.6), (9, 0.3), (14, 0.1)], Step).Times(6));

    private static readonly DrawGrid Night = Desk.And(DrawGrid.OfStates([(7.5, 1)], Step).Times(8));

    private static readonly DrawGrid Day = Desk.And(DrawGrid.OfStates([(4, 1)], Step).Times(8));

    internal static Figure Work(Printed printed)
    {
        var n = PrintedNumbers.In(printed.What);
        var at = n.Length > 0 ? n[^1] : 0;
        return printed.Id switch
        {
            "5.4/tail" => 1 - Idle.Below(72 + 5 * (at - 1)),
            "5.4/idle" => printed.Unit == "W" ? Idle.Quantile(at) : Idle.Below(at),
            "5.4/night" => Of(Night, printed, at),
            "5.4/day" => Of(Day, printed, at),
            "5.4/mixture" => Of(Night.Or(0.5, Day), printed, at),
            "5.4/independent" => Of(Desk.And(DrawGrid.OfStates([(4, 0.5), (7.5, 0.5)], Step).Times(8)), printed, at),
            "5.4/two" => Chance(DrawGrid.OfStates([(1, 0.5), (2, 0.5)], 1).Times(2), at),
            "5.4/three" => Chance(DrawGrid.OfStates([(2, 0.75), (5, 0.25)], 1).Times(3), at),
            "5.4/radios" => Chance(DrawGrid.OfStates([(5, 0.6), (9, 0.3), (14, 0.1)], 1).Times(2), at),
            "5.4/unlike" => Chance(Unlike(), at),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static Figure Of(DrawGrid grid, Printed printed, double at) => printed.What switch
    {
        var what when what.EndsWith("mean", StringComparison.Ordinal) => grid.MeanWatts,
        var what when what.EndsWith("spread", StringComparison.Ordinal) => grid.SpreadWatts,
        _ => grid.Quantile(at),
    };

    private static DrawGrid Unlike() => new[] { 0.1, 0.2, 0.3, 0.4, 0.5 }.Aggregate(DrawGrid.Nothing(1), (sum, chance) => sum.And(DrawGrid.OfStates([(0, 1 - chance), (1, chance)], 1)));

    private static double Chance(DrawGrid grid, double watts) => grid.Below(watts) - grid.Below(watts - 1);
}
