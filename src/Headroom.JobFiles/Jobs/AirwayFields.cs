using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What somebody changed in the way of the air of a switch.</summary>
internal static class AirwayFields
{
    private static readonly Field<Given<Metres>> Opening = new("opening", () => Sensible.Part, "Diameter of the round opening of one fan.", "38 mm");
    private static readonly Field<Given<Share>> Free = new("grille", () => Sensible.FreeArea, "Free area of its grille, as made.", "45 %");
    private static readonly Field<Given<Share>> FreeThen = new("grille then", () => Sensible.FreeArea, "The same after the grille was opened; 100 % where it was cut away.", "75 %");
    private static readonly Field<Given<Metres>> Gap = new("gap", () => Sensible.OutletGap, "Gap between the opening and what stands in front of it, as made.", "6 mm");
    private static readonly Field<Given<Metres>> GapThen = new("gap then", () => Sensible.OutletGap, "The same after the fan was moved.", "30 mm");

    /// <summary>The change.</summary>
    public static Field<AirwayChange> Air { get; } = new(
        "air",
        () => new ObjectShape<AirwayChange>("air way", [Opening, Free, FreeThen, Gap, GapThen], values => new AirwayChange(
            values.Get(Opening), values.Get(Free), values.Get(FreeThen), values.Get(Gap), values.Get(GapThen)))
        {
            About = "What somebody changed in the way of the air: a grille that was opened, a fan that was moved away from what stands in front of it.",
        },
        "What was changed in the way of its air: an opened grille, a moved fan.",
        "{opening: 38 mm, grille: 45 %, grille then: 75 %}");
}
