using Headroom.Engineering;
using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class EnclosureFigures
{
    // The store of the rows WC: sound power and room constant.
    private const double Power = 60;
    private const double Constant = 8;

    internal static Figure Work(Printed printed)
    {
        var n = Told.Numbers(printed.What);
        return printed.Id[..2] switch
        {
            "EN" => printed.What.EndsWith("reduction", StringComparison.Ordinal) ? Enclosures.WithOpenings(n[0], n[1]) : Enclosures.InsertionLoss(n[0], n[1], n[2]),
            "CI" => FanLaws.LevelChange(n[0]),
            "WL" => Wall(n),
            "WO" => Enclosures.WithOpenings(n[1], n[0]),
            _ => Store(printed.What),
        };
    }

    private static double Wall(double[] n) => Enclosures.Composite(new WallPart(n[1], n[0]), new WallPart(n[3], n[2]), new WallPart(n[4], 0));

    private static double Store(string what)
    {
        var first = Power + RoomAcoustics.ReverberantLessPower(Constant);
        if (what == "level in the first room")
            return first;
        var wall = Csv.Read("sound-enclosures").First(row => row[0] == what[^4..]);
        return first + Enclosures.NextRoomLessThis(Wall(Told.Numbers(wall[1])), 10, RoomFigures.Absorption(1, 1000));
    }
}
