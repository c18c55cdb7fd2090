using Headroom.Domain.Jobs;

namespace Headroom.Domain.Ledgers;

/// <summary>What only some entries of a ledger have; most share <see cref="None"/>.</summary>
internal sealed record LedgerExtras
{
    /// <summary>Nothing of it.</summary>
    public static LedgerExtras None { get; } = new();

    // Thousands of entries assume the same and have nothing else: they share one. Two threads may both make it; either will do.
    private static LedgerExtras _lastAssuming = None;

    /// <summary>As <see cref="LedgerEntry.Inside"/>.</summary>
    public bool Inside { get; init; }

    /// <summary>As <see cref="LedgerEntry.Parts"/>.</summary>
    public KnownParts? Parts { get; init; }

    /// <summary>As <see cref="LedgerEntry.Question"/>.</summary>
    public string? Question { get; init; }

    /// <summary>As <see cref="LedgerEntry.Cautions"/>.</summary>
    public IReadOnlyList<Caution> Cautions { get; init; } = [];

    /// <summary>As <see cref="LedgerEntry.Advice"/>.</summary>
    public IReadOnlyList<string> Advice { get; init; } = [];

    /// <summary>As <see cref="LedgerEntry.Assumed"/>.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>As <see cref="LedgerEntry.Beside"/>.</summary>
    public IReadOnlyList<BesideRow> Beside { get; init; } = [];

    /// <summary>As <see cref="LedgerEntry.Measured"/>.</summary>
    public IReadOnlyList<Comparison> Measured { get; init; } = [];

    /// <summary>As <see cref="LedgerEntry.Overruled"/>.</summary>
    public Overruling? Overruled { get; init; }

    /// <summary>The same with what was assumed.</summary>
    public LedgerExtras Assuming(IReadOnlyList<string> assumed)
    {
        if (Assumed == assumed)
            return this;
        if (!ReferenceEquals(this, None))
            return this with { Assumed = assumed };
        var last = _lastAssuming;
        return last.Assumed == assumed ? last : _lastAssuming = new() { Assumed = assumed };
    }
}
