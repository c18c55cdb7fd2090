using Headroom.Engineering.Differences;

namespace Headroom.Cli.Text;

/// <summary>Two designs that were compared.</summary>
/// <param name="Ledgers">In what their ledgers differ.</param>
/// <param name="Designs">In what they differ themselves.</param>
/// <param name="Swaps">The models that were swapped; empty where two designs of the job were compared.</param>
internal sealed record ComparedDesigns(LedgerDifference Ledgers, IReadOnlyList<DesignDifference> Designs, IReadOnlyList<ModelSwap> Swaps);
