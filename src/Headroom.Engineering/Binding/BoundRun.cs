using System.Collections.Immutable;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Binding;

/// <summary>A run in its pieces, cords included, with what each is made of and how warm it is.</summary>
/// <param name="Drop">The drop.</param>
/// <param name="Pieces">The pieces from the closet outwards.</param>
public sealed record BoundRun(Drop Drop, ImmutableArray<BoundPiece> Pieces)
{
    /// <summary>Resistance of one conductor from end to end [Ω]; null when a length or a cable is not known.</summary>
    public double? ConductorOhms
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Pieces.Length; i++)
            {
                if (Pieces[i].Ohms is not { } ohms)
                    return null;
                sum += ohms;
            }

            return sum;
        }
    }

    /// <summary>True when it is fibre: no watts, no ohms.</summary>
    public bool IsFibre
    {
        get
        {
            for (var i = 0; i < Pieces.Length; i++)
            {
                if (Pieces[i].Fibre is not null)
                    return true;
            }

            return false;
        }
    }

    /// <summary>Length from end to end, cords included [m]; null when one is not known.</summary>
    public double? Metres => Pieces.All(piece => piece.Metres is not null) ? Pieces.Sum(piece => piece.Metres!.Value) : null;

    /// <summary>The longest piece that is not a cord: the one an installer can change; null when no length is known.</summary>
    public BoundPiece? Longest => Pieces.Where(piece => !piece.Cord && piece.Metres is not null).MaxBy(piece => piece.Metres);

    /// <summary>What must be asked on site before the run can be worked out; null when nothing.</summary>
    public string? Question => ConductorOhms is not null ? null
        : Pieces.Any(piece => piece.Metres is null) ? $"how long is {Drop.Id}? pace the route, or read the metre marks on the sheath"
        : $"which cable is {Drop.Id}? read the gauge on the sheath";
}
