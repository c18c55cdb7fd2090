namespace Headroom.Engineering.MeasuredDraws;

/// <summary>One model in one mode with what was read of it.</summary>
/// <param name="Model">The model.</param>
/// <param name="Mode">The mode.</param>
/// <param name="Sites">The readings by site.</param>
/// <param name="NameplateWatts">The catalogue's most in that mode [W].</param>
/// <param name="UnitWatts">How far units of one site differ: standard deviation [W].</param>
/// <param name="Draw">What follows for a new site.</param>
public sealed record FittedDraw(string Model, string Mode, IReadOnlyList<SiteReadings> Sites, double NameplateWatts, double UnitWatts, DrawModel Draw)
{
    /// <summary>Below so many sites the belief beforehand decides, not the readings.</summary>
    public const int EnoughSites = 5;

    /// <summary>What keeps totals of it; null when nothing does.</summary>
    internal DrawMemory? Memory { get; init; }

    /// <summary>All that it was worked out from, as the memory finds it; empty without one.</summary>
    internal string Key { get; init; } = "";

    /// <summary>True when the belief beforehand decides.</summary>
    public bool IsPriorDriven => Sites.Count < EnoughSites;

    /// <summary>How many readings there are.</summary>
    public int Readings => Sites.Sum(site => site.Watts.Count);
}
