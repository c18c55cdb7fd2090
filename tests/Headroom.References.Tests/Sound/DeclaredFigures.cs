using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class DeclaredFigures
{
    internal static Figure Work(Printed printed)
    {
        var (given, asked) = Told.Split(printed.What);
        var n = Told.Numbers(given);
        return printed.Id switch
        {
            "DC-2" => DeclaredSound.FromBels(n[0]),
            "DC-4" => -DeclaredSound.Mean(0),
            "DC-20" => asked == "upper" ? DeclaredSound.FromBels(n[0]) : DeclaredSound.Mean(DeclaredSound.FromBels(n[0])),
            "DC-21" or "DC-22" => asked == "difference" ? DeclaredSound.FromBels(n[0]) - n[1] : DeclaredSound.Mean(DeclaredSound.FromBels(n[0])) - n[1],
            "DC-23" => DeclaredSound.LooksLikeBels(n[0]),
            "DC-24" => DeclaredSound.PowerOfBystander(0),
            _ => PrintedTables.Nothing(printed),
        };
    }
}
