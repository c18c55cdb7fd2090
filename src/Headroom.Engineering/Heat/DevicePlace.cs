using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Heat;

/// <summary>The air of a space in which devices hang, where it may matter to them.</summary>
/// <param name="Space">The space.</param>
/// <param name="Cases">Its air, in the order written; empty when no temperature is known.</param>
internal sealed record DevicePlace(Space Space, IReadOnlyList<AirCase> Cases)
{
    // No rating of what hangs in an office matters between these [°C].
    private const double WarmFrom = 30;
    private const double ColdBelow = 5;

    /// <summary>The warmest case; null when none is known.</summary>
    public AirCase? Warmest { get; } = Outermost(Cases, (one, other) => one > other);

    /// <summary>The coldest case; null likewise.</summary>
    public AirCase? Coldest { get; } = Outermost(Cases, (one, other) => one < other);

    /// <summary>True where the kind of place or its air gives reason to judge what hangs in it.</summary>
    public bool Matters => IsRough || Warmest?.Celsius >= WarmFrom || IsCold;

    /// <summary>True where it may be cold enough for the lower end of a rating.</summary>
    public bool IsCold => Coldest?.Celsius < ColdBelow;

    private bool IsRough => Space.Kind is "loft" or "outdoors" or "cupboard" or "plant room";

    private static AirCase? Outermost(IReadOnlyList<AirCase> cases, Func<double, double, bool> beyond)
    {
        AirCase? found = null;
        foreach (var one in cases)
        {
            if (one.Celsius is { } celsius && (found is null || beyond(celsius, found.Celsius!.Value)))
                found = one;
        }

        return found;
    }
}
