using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies;

/// <summary>Remedies of a design, best first.</summary>
/// <param name="Before">The ledger of the design as it is.</param>
/// <param name="Asked">The entries that were to be helped, worst first.</param>
/// <param name="Remedies">What helps: what costs nothing first, then by gain for the money, then what has no known price.</param>
/// <param name="Helpless">Entries of those for which nothing was found.</param>
/// <param name="Studied">How many changed designs were studied.</param>
/// <param name="NoGain">How many of them the study calls no gain.</param>
/// <param name="Dominated">How many gain, but no more than another that is no dearer and does no more harm.</param>
/// <param name="NotTried">How many ideas were left out because there were too many.</param>
public sealed record RemedyResult(
    Ledger Before, IReadOnlyList<LedgerEntry> Asked, IReadOnlyList<Remedy> Remedies, IReadOnlyList<LedgerEntry> Helpless, int Studied, int NoGain, int Dominated, int NotTried);
