namespace Headroom.Engineering.Heat;

/// <summary>Everything worked out of one unit.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Place">The space it stands in; null when not said.</param>
/// <param name="Cabinet">The cabinet round it; null for none.</param>
/// <param name="Cases">Its air in each case, hottest first; empty when nothing tells how warm it is.</param>
public sealed record UnitHeat(HeatUnit Unit, HeatPlace? Place, WarmBox? Cabinet, IReadOnlyList<UnitCase> Cases)
{
    /// <summary>Share of its own air that comes back to its inlet [1].</summary>
    public double Share { get; init; }

    /// <summary>What it leaves in its cabinet together with the units beside it.</summary>
    public HeatLoad InCabinet { get; init; } = HeatLoad.Nothing;

    /// <summary>The warmest air it is rated for at this height [°C]; null when not known.</summary>
    public double? Most { get; init; }

    /// <summary>The hottest case; null when nothing tells how warm it is.</summary>
    public UnitCase? Worst => Cases.Count > 0 ? Cases[0] : null;

    /// <summary>The coldest case; null likewise.</summary>
    public UnitCase? Coldest => Cases.Count > 0 ? Cases[^1] : null;

    /// <summary>What is to be found out before its air is known; null when it is.</summary>
    public string? Question { get; init; }

    /// <summary>A fanless unit right above or below it, on which or under which it lies; null for none.</summary>
    public string? Stacked { get; init; }

    /// <summary>The case of a name; null when there is none.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The case.</returns>
    public UnitCase? In(string? name)
    {
        for (var i = 0; i < Cases.Count; i++)
        {
            if (string.Equals(Cases[i].Name, name, StringComparison.OrdinalIgnoreCase))
                return Cases[i];
        }

        return null;
    }
}
