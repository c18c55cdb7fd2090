using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Differences;

namespace Headroom.Engineering.Remedies;

/// <summary>A change that the study of the whole changed design calls a gain.</summary>
/// <param name="Kind">The kind of remedy, in a word or two.</param>
/// <param name="Text">What is done, in words.</param>
/// <param name="Change">The design it makes, saying only what differs from the one that is mended.</param>
/// <param name="After">The ledger of the changed design.</param>
public sealed record Remedy(string Kind, string Text, Design Change, Ledger After)
{
    /// <summary>Entries that were short or tight and are better, the largest gain first.</summary>
    public IReadOnlyList<EntryChange> Better { get; init; } = [];

    /// <summary>Entries that were short or tight and are not there any more, since nothing asks for them.</summary>
    public IReadOnlyList<LedgerEntry> Gone { get; init; } = [];

    /// <summary>Entries that are worse: another verdict, or a tenth of the limit less left; the worst first.</summary>
    public IReadOnlyList<EntryChange> Worse { get; init; } = [];

    /// <summary>Entries that only the changed design has and that are not clear.</summary>
    public IReadOnlyList<LedgerEntry> NewlyAmiss { get; init; } = [];

    /// <summary>By how much less is amiss with what was asked for, as <see cref="Shortage"/> counts it [1].</summary>
    public double Gain { get; init; }

    /// <summary>By how much less is amiss with the whole ledger, what is worse elsewhere taken off [1].</summary>
    public double NetGain { get; init; }

    /// <summary>What it costs.</summary>
    public required RemedyCost Cost { get; init; }

    /// <summary>True when nothing is bought for it.</summary>
    public bool BuysNothing { get; init; }

    /// <summary>Minutes of work that no task of an offer covers, from and to; common practice, no source.</summary>
    public (int Low, int High) Minutes { get; init; }

    /// <summary>Where the work can hurt somebody, void a warranty or needs somebody licensed.</summary>
    public IReadOnlyList<Caution> Cautions { get; init; } = [];

    /// <summary>How far its study can be trusted.</summary>
    public Certainty Certainty { get; init; }

    /// <summary>Why it is no surer; null when it is sure.</summary>
    public string? CertaintyWhy { get; init; }

    /// <summary>Gain over cost, in gains a hundred of the currency; null when the cost is not known or nothing [1].</summary>
    public double? GainPerHundred => Cost.Amount is > 0 and var amount ? 100 * Gain / (double)amount : null;
}
