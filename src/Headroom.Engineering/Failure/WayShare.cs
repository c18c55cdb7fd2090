namespace Headroom.Engineering.Failure;

/// <summary>Which share of the time the way of an endpoint works.</summary>
/// <param name="Share">Share of the time that all known parts of it work [1].</param>
/// <param name="Known">Parts of which it is known how often they fail.</param>
/// <param name="All">All parts.</param>
/// <param name="Missing">The first of the others; null when all are known.</param>
internal readonly record struct WayShare(double Share, int Known, int All, string? Missing)
{
    /// <summary>A way with no parts.</summary>
    public static WayShare Whole => new(1, 0, 0, null);

    /// <summary>The way with one part more.</summary>
    public WayShare With(double? share, string name) => share is { } works
        ? new(Share * works, Known + 1, All + 1, Missing)
        : new(Share, Known, All + 1, Missing ?? name);

    /// <summary>The way with all parts of another.</summary>
    public WayShare With(WayShare other) => new(Share * other.Share, Known + other.Known, All + other.All, Missing ?? other.Missing);
}
