using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A person at a spot who must not be disturbed.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="In">The space.</param>
/// <param name="Spot">Where the ear is, from the corner of the space [m]; null when not surveyed.</param>
/// <param name="Limit">The most that may be heard there [dB(A)]; null when nobody was asked.</param>
/// <param name="Why">Where the limit comes from, in words; null when not written.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Listener(string Id, string In, Given<Spot>? Spot, Given<SoundPressure>? Limit, string? Why, Place At)
{
    /// <summary>The named cases of temperature in which somebody is there; empty for all.</summary>
    public IReadOnlyList<string> When { get; init; } = [];
}
