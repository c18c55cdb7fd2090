using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>What is added of a kind of endpoint, or of one model, in a year.</summary>
/// <param name="Name">The kind, or the model in the catalogue.</param>
/// <param name="Yearly">A share of what there is, or a number of devices.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record DeviceGrowth(string Name, Reserve Yearly, Place At);
