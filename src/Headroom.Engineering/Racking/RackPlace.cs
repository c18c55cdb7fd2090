namespace Headroom.Engineering.Racking;

/// <summary>Where one thing is in a rack, or is proposed to go.</summary>
/// <param name="Thing">The thing.</param>
/// <param name="Lowest">The lowest unit it fills, from 1 at the bottom; null when it found no place.</param>
/// <param name="IsProposed">True when nobody wrote a place and one that fits was looked for.</param>
public sealed record RackPlace(RackThing Thing, int? Lowest, bool IsProposed)
{
    /// <summary>The highest unit it fills; null when it found no place.</summary>
    public int? Highest => Lowest + Thing.Fills - 1;
}
