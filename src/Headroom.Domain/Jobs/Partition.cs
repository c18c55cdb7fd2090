using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A wall between two spaces, as far as sound goes through it.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Between">The two spaces.</param>
/// <param name="Area">Area of the whole, door and gap included [m²]; null when not surveyed.</param>
/// <param name="Reduction">Sound reduction of the wall itself, Rw with its C added [dB]; null when not known.</param>
/// <param name="Door">Area of the door in it [m²]; null when it has none.</param>
/// <param name="DoorReduction">Sound reduction of the door [dB]; null when not known or there is none.</param>
/// <param name="Gap">Area of gaps that are open to the air, such as under a door [m²]; null when there are none.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Partition(
    string Id,
    IReadOnlyList<string> Between,
    Given<SquareMetres>? Area,
    Given<Decibels>? Reduction,
    Given<SquareMetres>? Door,
    Given<Decibels>? DoorReduction,
    Given<SquareMetres>? Gap,
    Place At)
{
    /// <summary>The space on the other side.</summary>
    /// <param name="space">A space.</param>
    /// <returns>The other one; null when the partition does not touch it.</returns>
    public string? Beyond(string space) => Between[0] == space ? Between[1] : Between[1] == space ? Between[0] : null;
}
