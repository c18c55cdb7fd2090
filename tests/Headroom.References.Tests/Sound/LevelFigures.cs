using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class LevelFigures
{
    internal static Figure Work(Printed printed)
    {
        var numbers = Told.Numbers(printed.What);
        return printed.Id switch
        {
            "LS-10" => Levels.OfLike(0, (int)numbers[0]),
            "LS-20" => Levels.Rise(0, -numbers[0]),
            _ => Levels.Together(numbers),
        };
    }
}
