using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A line that leads out of the house.</summary>
/// <param name="Id">The name that uplinks lead to, such as <c>line</c>.</param>
/// <param name="Down">What it gives towards the house [bit/s]; null when not known.</param>
/// <param name="Up">What it takes from the house [bit/s]; null when not known.</param>
/// <param name="Works">Share of the time that it works, as its contract says; null when not known.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Line(string Id, Given<BitsPerSecond>? Down, Given<BitsPerSecond>? Up, Given<Share>? Works, Place At)
{
    /// <summary>The boxes between the last switch and the line, by the names people say, such as router and line-box; empty when not written.</summary>
    public IReadOnlyList<string> Boxes { get; init; } = [];

    /// <summary>How long they take from the mains coming back until the line is there [s]; null when not known.</summary>
    public Given<Seconds>? Boot { get; init; }
}
