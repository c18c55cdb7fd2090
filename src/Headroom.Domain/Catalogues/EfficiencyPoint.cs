using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>The efficiency of a supply at one load.</summary>
/// <param name="Load">The load as a share of the rated output.</param>
/// <param name="Efficiency">Output over input, 0 to 1.</param>
public sealed record EfficiencyPoint(Given<Share> Load, Given<Share> Efficiency);
