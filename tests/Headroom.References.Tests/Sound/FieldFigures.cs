using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class FieldFigures
{
    internal static Figure Work(Printed printed)
    {
        var n = Told.Numbers(printed.What);
        if (printed.Id[0] == 'F')
            return PointSource.LevelLessPower(n[0], n[1]);
        var surface = BoxSurface.SquareMetres(n[0], n[1], n[2], n[3]);
        var (_, asked) = Told.Split(printed.What);
        return asked switch
        {
            "S" => surface,
            "10 lg S" => BoxSurface.PowerLessLevel(surface),
            _ => BoxSurface.K2(surface, n[4]),
        };
    }

    internal static Figure Near(Printed printed)
    {
        var n = Told.Numbers(printed.What);
        return printed.What switch
        {
            "sound power less level at 1 m on a desk" => Math.Round(-PointSource.LevelLessPower(2, 1), 1),
            "radius taken until readings teach another" => NearField.PriorRadius,
            "its uncertainty" => NearField.PriorUncertainty,
            var what when what.StartsWith("disc", StringComparison.Ordinal) => NearField.DiscLevelLessPower(n[0], n[1]),
            var what when what.StartsWith("point", StringComparison.Ordinal) => PointSource.LevelLessPower(2, n[0]),
            var what when what.EndsWith("desk", StringComparison.Ordinal) => Prior(n) + PointSource.LevelLessPower(2, 1),
            _ => Prior(n),
        };
    }

    // "fan of 20 dBA at 5000, 2 at 8000"
    private static double? Prior(double[] n) => SwitchPrior.Power((n[0], n[1]), speed: n[3], fans: (int)n[2]);
}
