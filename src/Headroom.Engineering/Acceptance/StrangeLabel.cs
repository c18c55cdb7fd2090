using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acceptance;

/// <summary>A record whose label is no drop of the schedule. It is never taken for one.</summary>
/// <param name="Record">The record.</param>
/// <param name="Near">The drop whose label is the same but for signs, zeros and the size of letters; null when none is.</param>
public sealed record StrangeLabel(TesterResult Record, string? Near);
