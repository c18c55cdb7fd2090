using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Racking;

/// <summary>A rack and all that is in it.</summary>
/// <param name="Rack">The rack as surveyed.</param>
/// <param name="Cabinet">Its model; null when not written.</param>
/// <param name="Places">What is screwed to its rails, and where, from the bottom.</param>
/// <param name="Loose">What lies on its shelves.</param>
public sealed record RackUse(Rack Rack, CabinetModel? Cabinet, IReadOnlyList<RackPlace> Places, IReadOnlyList<RackThing> Loose)
{
    /// <summary>Its height; null when not known.</summary>
    public Given<RackUnits>? Height => Rack.Height ?? Cabinet?.Inside;

    /// <summary>Its usable depth; null when not known.</summary>
    public Given<Metres>? Depth => Rack.Depth ?? Cabinet?.UsableDepth;

    /// <summary>What it may carry; null when not known.</summary>
    public Given<Kilograms>? Load => Rack.Load ?? Cabinet?.Load;

    /// <summary>Units filled by what is screwed to the rails.</summary>
    public int Filled => Places.Sum(place => place.Thing.Fills);

    /// <summary>Everything in it.</summary>
    public IEnumerable<RackThing> Things => Places.Select(place => place.Thing).Concat(Loose);

    /// <summary>Its fittings of a kind.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>Those in it.</returns>
    public IEnumerable<Fitting> FittingsOf(string kind) => Things.Select(thing => thing.Fitting).OfType<Fitting>().Where(fitting => fitting.Kind == kind);
}
