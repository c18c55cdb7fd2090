using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>Something with an edge round which sound must go: a desk under which a switch stands, a counter, a screen.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="In">The space.</param>
/// <param name="Kind"><c>desk</c>: a top at the height of its edge, open below; <c>screen</c>: closed from the floor up to its edge.</param>
/// <param name="From">One end of the edge [m].</param>
/// <param name="To">The other end [m].</param>
/// <param name="Depth">How far a desk's top reaches back from its edge [m]; null when not written.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Screen(string Id, string In, string Kind, Given<Spot> From, Given<Spot> To, Given<Metres>? Depth, Place At);
