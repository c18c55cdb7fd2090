using System.Globalization;
using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class EdgeFigures
{
    // Sound power of the source and room constant of RM-1, as the rows BR have them.
    private const double Power = 54.5;

    // The rows were worked out at the names of the bands.
    private static readonly double[] Nominal = [63, 125, 250, 500, 1000, 2000, 4000, 8000];

    internal static Figure Work(Printed printed) => printed.Id[..2] switch
    {
        "BA" => Loss(printed.What[..2], Told.Numbers(printed.What)[0]),
        "BD" => Desk(printed.What),
        "PL" => Level(4, 1.0) - Level(2, 1.0),
        _ => Room(printed.What),
    };

    private static double Loss(string form, double fresnel) => form switch
    {
        "KA" => EdgeDiffraction.KurzeAnderson(fresnel),
        "MA" => EdgeDiffraction.Maekawa(fresnel),
        _ => EdgeDiffraction.Standard(fresnel),
    };

    // The edge lies at the origin; each end is given by x and y.
    private static Figure Desk(string what)
    {
        var (given, asked) = Told.Split(what);
        var n = Told.Numbers(given);
        var longer = EdgeDiffraction.PathDifference(Length(n[0], n[1]), Length(n[2], n[3]), Length(n[0] - n[2], n[1] - n[3]));
        if (asked == "delta")
            return longer;
        var form = asked[..2];
        return asked.EndsWith("Hz", StringComparison.Ordinal)
            ? Loss(form, EdgeDiffraction.Fresnel(longer, double.Parse(asked.Split(' ')[2], CultureInfo.InvariantCulture)))
            : Weighted(form, longer, asked[^4..]);
    }

    private static Figure Weighted(string form, double longer, string spectrum)
    {
        var row = Csv.Read("sound-spectra").First(row => row[0] == spectrum);
        var bands = Told.Numbers(Told.Split(row[1]).Given);
        return Octaves.LevelA(bands) - Octaves.LevelA([.. bands.Select((level, band) => level - Loss(form, EdgeDiffraction.Fresnel(longer, Nominal[band])))]);
    }

    private static Figure Room(string what)
    {
        var n = Told.Numbers(what);
        var straight = Power + PointSource.LevelLessPower(2, n[0]);
        var returned = Power + RoomAcoustics.ReverberantLessPower(RoomFigures.Constant(1));
        var (before, after) = (Levels.Together(straight, returned)!.Value, Levels.Together(straight - n[1], returned)!.Value);
        return Told.Split(what).Asked switch
        {
            "straight" => straight,
            "before" => before,
            "after" => after,
            "room share" => before - straight,
            _ => before - after,
        };
    }

    private static double Level(double directivity, double metres) => RoomAcoustics.LevelLessPower(directivity, metres, RoomFigures.Constant(1));

    private static double Length(double x, double y) => Math.Sqrt(x * x + y * y);
}
