using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Fields;

/// <summary>The sizes and spots of a job.</summary>
internal static class Boxes
{
    /// <summary>The inner size of a space.</summary>
    public static BoxShape<Given<Size>> Room { get; } = new(
        "length x width x height",
        Sensible.Side,
        sides => Together(sides, new Size(sides[0].Value.Value, sides[1].Value.Value, sides[2].Value.Value)));

    /// <summary>A spot in a space.</summary>
    public static BoxShape<Given<Spot>> Spot { get; } = new("length x width x height from the corner", Sensible.Coordinate, SpotOf);

    /// <summary>Where a space lies in the plan; without height it lies on the ground.</summary>
    public static BoxShape<Given<Spot>> Corner { get; } = new("length x width, or length x width x height, in the plan of the building", Sensible.Coordinate, SpotOf) { Least = 2 };

    private static Given<Spot> SpotOf(IReadOnlyList<Given<Metres>> sides) =>
        Together(sides, new Spot(sides[0].Value.Value, sides[1].Value.Value, sides.Count > 2 ? sides[2].Value.Value : 0));

    private static Given<T> Together<T>(IReadOnlyList<Given<Metres>> sides, T value)
        where T : struct =>
        new(value, string.Join(" x ", sides.Select(side => side.Written)), sides[^1].Origin, null, sides[0].At);
}
