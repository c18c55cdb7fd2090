using Headroom.Domain.Jobs;
using Headroom.Engineering.Airflow;

namespace Headroom.Engineering.Heat;

/// <summary>What the opening in front of one fan takes of its air, before and after somebody changed it.</summary>
/// <param name="Before">Resistance as made [Pa/(m³/s)²].</param>
/// <param name="Then">Resistance after the change [Pa/(m³/s)²].</param>
internal sealed record AirwayResistance(double Before, double Then)
{
    /// <summary>Both; null where something of it is not known, which the question then asks.</summary>
    public static AirwayResistance? Of(AirwayChange change, string id, out string? question)
    {
        question = change.Opening is null ? $"how wide is the round opening of one fan of {id}? write 'opening' of its 'air'"
            : (change.Free is null) != (change.FreeThen is null) ? $"how free is the grille of {id}, as made and then? write 'grille' and 'grille then'"
            : (change.Gap is null) != (change.GapThen is null) ? $"how far in front of the fan of {id} does something stand, as made and then? write 'gap' and 'gap then'"
            : change.Free is null && change.Gap is null ? $"what was changed in the air of {id}? write 'grille' and 'grille then', or 'gap' and 'gap then'"
            : null;
        if (question is not null)
            return null;
        var metres = change.Opening!.Value.Value;
        return new(
            Resistance(metres, change.Free?.Value.Value, change.Gap?.Value.Value),
            Resistance(metres, change.FreeThen?.Value.Value, change.GapThen?.Value.Value));
    }

    private static double Resistance(double diameter, double? free, double? gap) => Grille.Resistance(
        (free is { } share ? Grille.Coefficient(share) : 0) + (gap is { } metres ? Grille.RingCoefficient(Grille.RingShare(metres, diameter)) : 0),
        Math.PI * diameter * diameter / 4,
        Air.Usual);
}
