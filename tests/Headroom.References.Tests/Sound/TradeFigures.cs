using Headroom.Engineering;
using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

/// <summary>What the models make of the figures of the trade, which are common practice without a source: the models agree with one another, no more.</summary>
internal static class TradeFigures
{
    internal static Figure Work(Printed printed)
    {
        var n = Told.Numbers(printed.What);
        return printed.Id switch
        {
            "TG-1" => Rating(n[0]),
            "TG-2" or "TG-4" or "TG-5" => BackgroundCorrection.K1(n[0] - n[1]),
            "TG-3" => BackgroundCorrection.SourceAlone(n[0], n[1]).Level,
            "TG-6" or "TG-7" or "TG-9" => n[0] - PointSource.LevelLessPower(2, n[1]),
            "TG-8" => n[0] - RoomAcoustics.LevelLessPower(2, n[1], RoomFigures.Constant(1)),
            "TG-10" => Carried(n),
            "TG-11" => NearField.Radius(n[0], n[1], n[2]),
            "TG-12" => PointSource.Metres(n[1], 2, n[0]),
            "TG-13" => n[0] + PointSource.LevelLessPower(n[2], n[1]),
            "TG-14" => Precision.Apart(new(n[0], n[1]), new(n[2], n[3])),
            "TG-15" or "TG-19" => AtOutlet(printed.What, n),
            "TG-16" => Levels.Rise(n[1], n[0]),
            "TG-29" => BackgroundCorrection.SourceAlone(n[0], n[1]).Level - n[2] + (printed.What.EndsWith("clear tone", StringComparison.Ordinal) ? Audibility.TonePenalty(2) : 0),
            _ => Others(printed, n),
        };
    }

    private static Figure Others(Printed printed, double[] n) => printed.Id switch
    {
        "TG-17" or "TG-20" or "TG-24" => Ratio(printed.What, n),
        "TG-18" => n[0] - FanLaws.LevelChange(n[1]),
        "TG-21" => FanLaws.LevelChange(n[0]) - n[1],
        "TG-22" or "TG-23" => Weaker(AirFigures.SpeedOfWeaker(n[0], n[1]), printed.What),
        "TG-26" or "TG-27" => Speech.MetresOf(n[0], n[2]),
        "TG-28" => n.Length == 2 ? n[0] - n[1] : Speech.LevelAt(n[0], n[1]) - n[2],
        _ => PrintedTables.Nothing(printed),
    };

    private static double Weaker(double speed, string what) => Told.Split(what).Asked switch
    {
        "speed" => speed,
        "level" => FanLaws.LevelChange(speed),
        _ => 70 * speed,
    };

    private static double Ratio(string what, double[] n) =>
        what.EndsWith('%') ? 100 * (FanLaws.SpeedRatio(n[0]) - 1) : FanLaws.SpeedRatio(n[0]) * (n.Length > 1 ? n[1] : 1);

    // Between the curves of NR 30 and NR 35, as their levels lie; the row takes them as printed, to a tenth.
    private static double Rating(double level)
    {
        var (low, high) = (Math.Round(NoiseRating.LevelA(30), 1), Math.Round(NoiseRating.LevelA(35), 1));
        return 30 + 5 * (level - low) / (high - low);
    }

    private static double Carried(double[] n)
    {
        var alone = n[0] + PointSource.LevelLessPower(2, n[2]) - PointSource.LevelLessPower(2, n[1]);
        return n.Length > 3 ? Levels.Together(alone, n[3])!.Value : alone;
    }

    private static double AtOutlet(string what, double[] n)
    {
        if (what.EndsWith("power", StringComparison.Ordinal))
            return NearField.LevelAt(n[0], NearField.PriorRadius, 1) - PointSource.LevelLessPower(2, 1);
        var alone = NearField.LevelAt(n[0], NearField.PriorRadius, n[1]);
        return n.Length > 2 ? Levels.Together(alone, n[2])!.Value : alone;
    }
}
