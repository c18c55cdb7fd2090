using Headroom.Domain.Jobs;

namespace Headroom.Engineering;

/// <summary>A change of what switches reserve by, for one study only.</summary>
/// <param name="Switch">The switch; null for all.</param>
/// <param name="By">What it is to reserve by.</param>
public sealed record CountAs(string? Switch, ReservesBy By);
