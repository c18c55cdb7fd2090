using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies;

/// <summary>A kind of remedy: lists what could be tried for an entry. Whether it helps is for the study to say.</summary>
internal interface IRemedyKind
{
    /// <summary>What could be tried.</summary>
    /// <param name="entry">An entry that is short or tight.</param>
    /// <param name="at">The design and its building.</param>
    IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at);
}
