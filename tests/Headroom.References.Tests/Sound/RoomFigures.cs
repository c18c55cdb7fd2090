using System.Globalization;
using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class RoomFigures
{
    private static readonly string[] Bands = ["125", "250", "500", "1k", "2k", "4k"];

    internal static Figure Surfaces(Printed printed) =>
        Surface(int.Parse(printed.Id[3..], CultureInfo.InvariantCulture))[Array.IndexOf(Bands, printed.What[(printed.What.LastIndexOf(' ') + 1)..])];

    internal static Figure Work(Printed printed) => printed.Id[..2] switch
    {
        "RM" => Room(printed),
        "DD" => Doubled(printed),
        _ => Level(printed),
    };

    /// <summary>Room constant of a room of the reference at 1 kHz.</summary>
    internal static double Constant(int room) => RoomAcoustics.Constant(Absorption(room, 1000), Area(room));

    /// <summary>Absorption area of a room of the reference.</summary>
    internal static double Absorption(int room, double hertz)
    {
        var band = (int)Math.Round(Math.Log2(hertz / 125));
        return Parts(room).Sum(part => part.SquareMetres * Surface(part.Row)[band]);
    }

    private static double Area(int room) => Parts(room).Sum(part => part.SquareMetres);

    private static Figure Room(Printed printed)
    {
        var room = printed.Id[3] - '0';
        var absorption = Absorption(room, Told.Numbers(printed.What)[0]);
        var (area, volume) = (Area(room), Volume(room));
        return Told.Split(printed.What).Asked switch
        {
            "A" => absorption,
            "mean alpha" => absorption / area,
            "T Sabine" => RoomAcoustics.SabineSeconds(volume, absorption),
            "T Eyring" => RoomAcoustics.EyringSeconds(volume, area, absorption / area),
            "R" => RoomAcoustics.Constant(absorption, area),
            "critical distance, Q 1" => RoomAcoustics.CriticalMetres(1, RoomAcoustics.Constant(absorption, area)),
            _ => RoomAcoustics.CriticalMetres(2, RoomAcoustics.Constant(absorption, area)),
        };
    }

    // "RM-1, Q 2, 0.6 m"
    private static Figure Level(Printed printed)
    {
        var (room, n) = (printed.What[3] - '0', Told.Numbers(printed.What[5..]));
        return n.Length == 1 ? RoomAcoustics.ReverberantLessPower(Constant(room)) : RoomAcoustics.LevelLessPower(n[0], n[1], Constant(room));
    }

    private static Figure Doubled(Printed printed)
    {
        var (room, n) = (printed.What[3] - '0', Told.Numbers(printed.What[5..]));
        return RoomAcoustics.LevelLessPower(n[0], n[1], Constant(room)) - RoomAcoustics.LevelLessPower(n[0], 2 * n[1], Constant(room));
    }

    private static double Volume(int room) => room switch
    {
        1 => 4 * 3 * 2.5,
        2 => 5 * 4 * 2.7,
        3 => 12 * 8 * 2.7,
        _ => 3.5 * 3 * 2.6,
    };

    // The surfaces of the four rooms, with the row of the table of absorption that each has.
    private static (double SquareMetres, int Row)[] Parts(int room) => room switch
    {
        1 => [(12, 4), (12, 11), (30.2, 7), (3.0, 8), (1.8, 10)],
        2 => [(20, 3), (20, 7), (40.8, 7), (6, 9), (1.8, 10)],
        3 => [(96, 4), (96, 11), (82.2, 7), (24, 8), (1.8, 10)],
        _ => [(10.5, 2), (10.5, 11), (30, 7), (2, 8), (1.8, 10)],
    };

    private static ReadOnlySpan<double> Surface(int row) => row switch
    {
        1 => SurfaceTable.Concrete,
        2 => SurfaceTable.Vinyl,
        3 => SurfaceTable.Parquet,
        4 => SurfaceTable.Carpet,
        5 => SurfaceTable.CarpetOnFelt,
        6 => SurfaceTable.Brick,
        7 => SurfaceTable.Plasterboard,
        8 => SurfaceTable.Window,
        9 => SurfaceTable.PlateGlass,
        10 => SurfaceTable.Door,
        11 => SurfaceTable.CeilingTile,
        12 => SurfaceTable.Curtain,
        _ => SurfaceTable.Person,
    };
}
