using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What somebody changed in the way of the air of each fan of a switch, at its round opening.</summary>
/// <param name="Opening">Diameter of the opening [m]; null when not known.</param>
/// <param name="Free">Free area of its grille as a share of the opening, as made; null when no grille was changed or it is not known.</param>
/// <param name="FreeThen">The same after it was opened; null when no grille was changed.</param>
/// <param name="Gap">Gap between the opening and what stands in front of it, as made [m]; null when nothing was moved or it is not known.</param>
/// <param name="GapThen">The same after fan or switch was moved; null when nothing was moved.</param>
public sealed record AirwayChange(Given<Metres>? Opening, Given<Share>? Free, Given<Share>? FreeThen, Given<Metres>? Gap, Given<Metres>? GapThen);
