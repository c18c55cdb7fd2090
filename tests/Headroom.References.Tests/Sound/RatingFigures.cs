using System.Globalization;
using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class RatingFigures
{
    private static readonly string[] Bands = ["16", "31.5", .. Octaves.Names];

    internal static Figure Work(Printed printed)
    {
        var at = Array.IndexOf(Bands, printed.What[(printed.What.LastIndexOf(' ') + 1)..]);
        if (printed.Id == "NR-a")
            return NoiseRating.Offsets[at - 1];
        if (printed.Id == "NR-b")
            return NoiseRating.Slopes[at - 1];
        var number = int.Parse(printed.Id[3..], CultureInfo.InvariantCulture);
        return printed.Id[1] == 'R' ? Rating(number, at) : Criterion(printed.What, (number - NoiseCriterionTable.Lowest) / 5, at);
    }

    internal static Figure Criteria(Printed printed)
    {
        var (kind, asked) = Told.Split(printed.What);
        var criterion = RoomCriteria.Of(kind);
        return asked == "least" ? criterion?.Least : criterion?.Most;
    }

    private static Figure Rating(int number, int at) => at < 0 ? NoiseRating.LevelA(number) : NoiseRating.Curve(number, at - 1);

    private static Figure Criterion(string what, int curve, int at) => what switch
    {
        "dBA of the curve" => NoiseCriterion.LevelA(curve),
        "rated by tangency" => NoiseCriterion.Of([.. Enumerable.Range(2, Octaves.Count).Select(band => (double)NoiseCriterionTable.Level(curve, band))]).Rating,
        _ => (double)NoiseCriterionTable.Level(curve, at, what.StartsWith("older", StringComparison.Ordinal)),
    };
}
