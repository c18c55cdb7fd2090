using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Heat;

/// <summary>A space in which units stand, with its air case by case.</summary>
/// <param name="Space">The space.</param>
/// <param name="Load">What units and devices leave in it.</param>
/// <param name="Box">What holds its heat; null for a room that is not shut off.</param>
/// <param name="Cases">Its air, in the order written; empty when no temperature is known.</param>
public sealed record HeatPlace(Space Space, HeatLoad Load, WarmBox? Box, IReadOnlyList<AirCase> Cases)
{
    /// <summary>The case of a name; null when there is none.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The case.</returns>
    public AirCase? In(string? name)
    {
        for (var i = 0; i < Cases.Count; i++)
        {
            if (string.Equals(Cases[i].Name, name, StringComparison.OrdinalIgnoreCase))
                return Cases[i];
        }

        return null;
    }
}
