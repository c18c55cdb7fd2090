using Headroom.Engineering;
using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class FanFigures
{
    internal static Figure Work(Printed printed)
    {
        var n = Told.Numbers(printed.What);
        return printed.Id[..2] switch
        {
            "AF" => Affinity(n, Told.Split(printed.What).Asked),
            "NF" => printed.Id == "NF-1" ? Levels.OfLike(0, (int)n[0]) : Levels.OfLike(0, (int)n[0]) + FanLaws.LevelChange(0.5),
            "BP" => FanLaws.BladeTone((int)n[0], n[1]),
            "BT" => FanLaws.Beat(FanLaws.BladeTone((int)n[0], n[1]), FanLaws.BladeTone((int)n[0], n[2])),
            _ => FanLaws.Tachometer(n[0], (int)n[1]),
        };
    }

    private static Figure Affinity(double[] n, string asked) => asked switch
    {
        "flow" => FanLaws.Affinity(n[0]).Flow,
        "pressure" => FanLaws.Affinity(n[0]).Pressure,
        "shaft power" => FanLaws.Affinity(n[0]).Power,
        _ => FanLaws.LevelChange(n[0], n[1]),
    };
}
