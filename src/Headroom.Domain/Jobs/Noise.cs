using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>Equipment of the client's own that is heard and stays, such as a printer.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="In">The space it stands in.</param>
/// <param name="Spot">The spot in the space [m]; null when not surveyed.</param>
/// <param name="Count">How many alike stand there.</param>
/// <param name="Sound">What is heard of one, as a power or as a pressure at a distance; both null when nobody knows.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Noise(string Id, string In, Given<Spot>? Spot, int Count, FanLevel Sound, Place At);
