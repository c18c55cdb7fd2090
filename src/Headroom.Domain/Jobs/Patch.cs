using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>One cord: a drop, or an endpoint without a drop, on a port.</summary>
/// <param name="What">The id of the drop or endpoint.</param>
/// <param name="To">The port.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Patch(string What, PortRef To, Place At);
