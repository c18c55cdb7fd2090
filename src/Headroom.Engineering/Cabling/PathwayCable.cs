using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>A cable of the job in a pathway.</summary>
/// <param name="Drop">The drop.</param>
/// <param name="Piece">The piece of it that lies there.</param>
/// <param name="Millimetres">Its outer diameter [mm]; null when not known.</param>
public sealed record PathwayCable(string Drop, BoundPiece Piece, double? Millimetres)
{
    /// <summary>How well it is proof against mains beside it; null for fibre, which needs no distance.</summary>
    public SeparationClass? Class => Piece.Fibre is not null ? null
        : Piece.Copper?.Category is not { } category ? SeparationClass.A
        : category.StartsWith('7') || category.StartsWith('8') ? SeparationClass.D
        : category is not ("5e" or "6" or "6A" or "6a") ? SeparationClass.A
        : Piece.Copper.Screened == true ? SeparationClass.C : SeparationClass.B;
}
