using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>How a closet is shut off from the room around it.</summary>
/// <param name="Walls">What the walls are made of, as written; null when not written.</param>
/// <param name="Exposed">The faces that touch the surrounding air: front, back, left, right, sides, top, bottom.</param>
/// <param name="Vents">Free area of the vents [m²], 0 for <c>none</c>; null when not surveyed.</param>
/// <param name="Beside">The space its faces look into; null when not written.</param>
public sealed record Enclosure(string? Walls, IReadOnlyList<string> Exposed, Given<SquareMetres>? Vents, string? Beside)
{
    /// <summary>Sound reduction of the walls [dB]; null when not known.</summary>
    public Given<Decibels>? Reduction { get; init; }

    /// <summary>Height between the middles of the low and the high vents [m]; null when not written.</summary>
    public Given<Metres>? VentsApart { get; init; }
}
