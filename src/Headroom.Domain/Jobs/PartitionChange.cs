using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What a design changes at a wall between two spaces.</summary>
/// <param name="Id">The partition.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record PartitionChange(string Id, Place At)
{
    /// <summary>Sound reduction of the door in it [dB]; null for the same.</summary>
    public Given<Decibels>? DoorReduction { get; init; }

    /// <summary>Area of gaps that are open to the air [m²]; null for the same.</summary>
    public Given<SquareMetres>? Gap { get; init; }

    /// <summary>This change, completed by another where it does not say.</summary>
    /// <param name="other">The change to fall back on.</param>
    /// <returns>The completed change.</returns>
    public PartitionChange Over(PartitionChange other) => this with { DoorReduction = DoorReduction ?? other.DoorReduction, Gap = Gap ?? other.Gap };

    /// <summary>The partition with the change.</summary>
    /// <param name="wall">The partition as surveyed.</param>
    /// <returns>The partition as it is then.</returns>
    public Partition In(Partition wall) => wall with { DoorReduction = DoorReduction ?? wall.DoorReduction, Gap = Gap ?? wall.Gap };
}
