using System.Globalization;
using Headroom.Engineering.Racking;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class RackFigures
{
    private const double MillimetresPerInch = 25.4;

    internal static Figure Work(Printed printed) => printed.What switch
    {
        "one unit" => RackHeight.SpaceMillimetres(1),
        "one unit in inches" => RackHeight.SpaceMillimetres(1) / MillimetresPerInch,
        "hole pitch within a unit" => Figure.List(RackHeight.HolePitchMillimetres.Select(pitch => pitch.ToString(CultureInfo.InvariantCulture))),
        "the three together" => RackHeight.HolePitchMillimetres.Sum(),
        "panel width" => RackHeight.PanelWidthMillimetres,
        "hole columns" => RackHeight.HoleColumnsMillimetres,
        "clear opening, least" => RackHeight.OpeningMillimetres,
        var what when what.StartsWith("panel of", StringComparison.Ordinal) => RackHeight.PanelMillimetres(PrintedNumbers.In(what)[0]),
        var what => RackHeight.SpaceMillimetres(PrintedNumbers.In(what)[0]),
    };
}
