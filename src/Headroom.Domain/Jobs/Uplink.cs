using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>A link from a switch towards the line.</summary>
/// <param name="From">The port it leaves from.</param>
/// <param name="To">The port of another switch, or a name such as <c>line</c> for what lies outside the job.</param>
/// <param name="Media">copper, fibre or direct; null when not said.</param>
/// <param name="Module">The pluggable module, at both ends unless another is said for the far one; null when none or not said.</param>
/// <param name="Drop">The drop or backbone cable it runs on; null when not said.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Uplink(PortRef From, PortRef To, string? Media, string? Module, string? Drop, Place At)
{
    /// <summary>The module at the far end, where it is another; null when the same or not said.</summary>
    public string? FarModule { get; init; }
}
