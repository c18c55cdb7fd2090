namespace Headroom.Domain.Ledgers;

/// <summary>A figure shown beside an entry without verdict: another state or another way of counting.</summary>
/// <param name="Group">What the row belongs to: <c>state</c> or <c>setting</c>.</param>
/// <param name="Name">The state or way in words.</param>
/// <param name="Demand">What it asks, in the entry's unit; null when not known.</param>
/// <param name="Limit">What there is, in the entry's unit; null when not known.</param>
/// <param name="Note">Who would stay dark, or nothing.</param>
public sealed record BesideRow(string Group, string Name, double? Demand, double? Limit, string Note);
