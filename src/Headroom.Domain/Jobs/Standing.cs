using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>Where a unit stands.</summary>
/// <param name="In">A space or a rack; null when not said.</param>
/// <param name="Spot">The spot in the space [m]; null when not said.</param>
/// <param name="Unit">The lowest rack unit it fills, from the bottom; null when not in a rack or not said.</param>
public sealed record Standing(string? In, Given<Spot>? Spot, int? Unit)
{
    /// <summary>The unit it is stacked on; null when it stands by itself.</summary>
    public string? On { get; init; }

    /// <summary>The day it was put in; null when not said.</summary>
    public DateOnly? Since { get; init; }

    /// <summary>This place, completed by another where it does not say.</summary>
    /// <param name="other">The place to fall back on.</param>
    /// <returns>The completed place.</returns>
    /// <remarks>A new space makes the old spot and rack unit meaningless: they are not taken over.</remarks>
    public Standing Over(Standing other) => In is null || In == other.In
        ? new(In ?? other.In, Spot ?? other.Spot, Unit ?? other.Unit) { On = On ?? other.On, Since = Since ?? other.Since }
        : this with { Since = Since ?? other.Since };
}
