using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What a design changes at a cupboard.</summary>
/// <param name="Id">The space.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record SpaceChange(string Id, Place At)
{
    /// <summary>Free area of its vents [m²]; null for the same.</summary>
    public Given<SquareMetres>? Vents { get; init; }

    /// <summary>Height between the middles of the low and the high vents [m]; null for the same.</summary>
    public Given<Metres>? VentsApart { get; init; }

    /// <summary>Sound reduction of its walls [dB]; null for the same.</summary>
    public Given<Decibels>? Reduction { get; init; }

    /// <summary>This change, completed by another where it does not say.</summary>
    /// <param name="other">The change to fall back on.</param>
    /// <returns>The completed change.</returns>
    public SpaceChange Over(SpaceChange other) => this with
    {
        Vents = Vents ?? other.Vents,
        VentsApart = VentsApart ?? other.VentsApart,
        Reduction = Reduction ?? other.Reduction,
    };

    /// <summary>The space with the change.</summary>
    /// <param name="space">The space as surveyed.</param>
    /// <returns>The space as it is then.</returns>
    public Space In(Space space)
    {
        var walls = space.Enclosure ?? new Enclosure(null, [], null, null);
        return space with
        {
            Enclosure = walls with { Vents = Vents ?? walls.Vents, VentsApart = VentsApart ?? walls.VentsApart, Reduction = Reduction ?? walls.Reduction },
        };
    }
}
