using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>A guess in three figures: at best, most likely, at worst.</summary>
/// <param name="Low">At best.</param>
/// <param name="Likely">Most likely.</param>
/// <param name="High">At worst.</param>
/// <param name="Written">As written.</param>
/// <param name="At">Where it stands.</param>
public sealed record ThreePoint(decimal Low, decimal Likely, decimal High, string Written, Place At);
