using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Walls between spaces.</summary>
internal static class PartitionFields
{
    private static readonly Field<IReadOnlyList<string>> Between = new(
        "between", new ListShape<string>("space", Shapes.Name("a space")), "The two spaces.", "[reception, kennels]") { IsRequired = true };

    private static readonly Field<Given<SquareMetres>> Area = new("area", () => Sensible.Wall, "Area of the whole, door and gap included.", "12 m2");
    private static readonly Field<Given<Decibels>> Reduction = new("reduction", () => Sensible.Loss, "Sound reduction of the wall itself: Rw with its C added.", "38 dB");
    private static readonly Field<Given<SquareMetres>> Door = new("door", () => Sensible.Wall, "Area of the door in it; left out where there is none.", "1.8 m2");
    private static readonly Field<Given<Decibels>> DoorReduction = new("door reduction", () => Sensible.Loss, "Sound reduction of the door.", "27 dB");
    private static readonly Field<Given<SquareMetres>> Gap = new("gap", () => Sensible.Opening, "Area that is open to the air, such as the gap under a door.", "90 cm2");

    /// <summary>The partitions by name.</summary>
    public static MapShape<IReadOnlyList<string>, Partition> Map { get; } = Named.Map(
        "partition",
        new ObjectShape<Partition>("partition", [Between, Area, Reduction, Door, DoorReduction, Gap], Build) { About = "A wall between two spaces, as far as sound goes through it." },
        "back-wall");

    private static Partition? Build(Values values)
    {
        var between = values.Must(Between);
        if (between.Count != 2)
        {
            values.Reader.Refuse(Slips.NotAValue, values.Entry(Between)!.Value.At, $"between of {values.Reader.Name} names {between.Count} spaces", "two spaces", "write both, like '[reception, kennels]'");
            return null;
        }

        return new Partition(
            "", between, values.Get(Area), values.Get(Reduction), values.Get(Door), values.Get(DoorReduction), values.Get(Gap), values.At);
    }
}
