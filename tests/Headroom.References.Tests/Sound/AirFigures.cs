using Headroom.Engineering;
using Headroom.Engineering.Acoustics;
using Headroom.Engineering.Airflow;
using Headroom.Engineering.Heat;

namespace Headroom.References.Tests.Sound;

/// <summary>Fans, paths of air, grilles, volts.</summary>
internal static class AirFigures
{
    private const double PerLitre = 1000;
    private const double Opening = 0.038;

    // Two invented curves of the reference, in l/s and Pa.
    private static readonly FanCurve A = new(Litres(0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5, 3.8), [62, 52, 42, 35, 31, 26, 18, 8, 0]);
    private static readonly FanCurve B = new(Litres(0, 1, 2, 3, 4, 5, 6, 7, 8, 8.5), [300, 262, 222, 190, 172, 150, 118, 76, 28, 0]);

    internal static Figure Work(Printed printed)
    {
        var (given, asked) = Told.Split(printed.What);
        var n = Told.Numbers(given);
        return printed.Id[..2] switch
        {
            "OP" => Meet(Curve(given).AtSpeed(n.Length > 1 ? n[1] : 1), n[0], asked),
            "PS" => Several(A, n[0], asked),
            "GL" => asked == "coefficient" ? Grille.Coefficient(n[0]) : Grille.Pressure(Grille.Coefficient(n[0]), 2, Air.Usual),
            "GC" => Cut(Curve(given), n, asked),
            "GG" => Guard(given, n, asked),
            "SF" => n[0] * Math.Sqrt(2),
            _ => Volts(n, asked),
        };
    }

    /// <summary>Speed and level at which a fan of the same free flow and a share of the pressure holds the flow of fan A.</summary>
    internal static double SpeedOfWeaker(double share, double litres)
    {
        var path = litres * PerLitre * PerLitre;
        return AirPath.SpeedFor(A.WithPressure(share), path, AirPath.Meet(A, path).Flow);
    }

    private static double[] Litres(params double[] flows) => Array.ConvertAll(flows, flow => flow / PerLitre);

    private static FanCurve Curve(string given) => given.Contains("fan A", StringComparison.Ordinal) ? A : B;

    private static double Meet(FanCurve curve, double k, string asked)
    {
        var point = AirPath.Meet(curve, k * PerLitre * PerLitre);
        return asked == "pressure" ? point.Pressure : point.Flow * PerLitre;
    }

    private static double Several(FanCurve curve, double k, string asked)
    {
        var one = Meet(curve, k, "flow");
        return asked switch
        {
            "flow of one" => one,
            "flow of two side by side" => Meet(curve.Parallel(2), k, "flow"),
            "two side by side over one" => Meet(curve.Parallel(2), k, "flow") / one,
            "flow of two one behind the other" => Meet(curve.Series(2), k, "flow"),
            _ => Meet(curve.Series(2), k, "flow") / one,
        };
    }

    private static double Cut(FanCurve curve, double[] n, string asked)
    {
        var grille = Grille.Resistance(Grille.Coefficient(n[1]), Math.PI * Opening * Opening / 4, Air.Usual) / (PerLitre * PerLitre);
        var (with, without) = (Meet(curve, n[0] + grille, "flow"), Meet(curve, n[0], "flow"));
        var speed = AirPath.SpeedFor(curve, n[0] * PerLitre * PerLitre, with / PerLitre);
        return asked switch
        {
            "resistance of the grille" => grille,
            "flow with it" => with,
            "flow without" => without,
            "gain of flow" => 100 * (without / with - 1),
            "speed for the old flow" => speed,
            _ => FanLaws.LevelChange(speed),
        };
    }

    private static Figure Guard(string given, double[] n, string asked) => asked switch
    {
        "bare" => BackgroundCorrection.SourceAlone(n[0], n[1]).Level,
        // The row takes the room out by the formula at any difference; the study takes a reading 15 dB above it as read, 0.03 dB more here.
        "guard" => n[0] - BackgroundCorrection.K1(n[0] - n[2]) - (n[1] - BackgroundCorrection.K1(n[1] - n[2])),
        _ => given.StartsWith("gap", StringComparison.Ordinal) ? Grille.RingShare(n[0], n[1]) : PrintedTables.Nothing(null!),
    };

    private static Figure Volts(double[] n, string asked) => asked switch
    {
        "how it takes it" => FanVolts.Fit(n[0], n[1]).ToString(),
        "speed" => 100 * FanVolts.SpeedRatio(n[0], n[1], n[2]),
        "air power" => FanLaws.Affinity(n[1] / n[0]).Power,
        "winding heat" => FanVolts.WindingHeat(n[0], n[1]),
        _ => FanLaws.LevelChange(FanVolts.SpeedRatio(n[0], n[1], n[2])),
    };
}
