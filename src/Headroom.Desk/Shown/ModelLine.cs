namespace Headroom.Desk.Shown;

/// <summary>A model of the catalogue.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Id">Its name.</param>
/// <param name="About">One line about it.</param>
/// <param name="Facts">All that is written about it.</param>
public sealed record ModelLine(string Kind, string Id, string About, IReadOnlyList<(string What, string Value, string Origin)> Facts);
