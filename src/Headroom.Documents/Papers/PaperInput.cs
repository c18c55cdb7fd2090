using Headroom.Documents.Layout;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;
using Headroom.Engineering;

namespace Headroom.Documents.Papers;

/// <summary>What papers are written from: one studied design of a job.</summary>
/// <param name="Job">The job.</param>
/// <param name="Results">What every discipline made of the design.</param>
/// <param name="Ledger">Its ledger.</param>
public sealed record PaperInput(Job Job, DesignResults Results, Ledger Ledger)
{
    /// <summary>The firm's head; null when nobody has given any.</summary>
    public Letterhead? Head { get; init; }

    /// <summary>The firm's colour, as <c>#rrggbb</c>; null for ink.</summary>
    public string? House { get; init; }

    /// <summary>The units in which figures are shown.</summary>
    public ShownUnits Units { get; init; } = new(imperial: false);

    /// <summary>The day, as papers write it: day, month in letters, year, so that nobody takes one for the other.</summary>
    public string Day => Ledger.On.ToString("d MMM yyyy", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>What stands at the foot of every sheet.</summary>
    public string Foot => $"{Job.Name} · design {Ledger.Design} · {Day}";

    /// <summary>The entries that may be seen: inside ones only where the paper stays inside.</summary>
    /// <param name="inside">True for a paper for the firm's own eyes.</param>
    public IReadOnlyList<LedgerEntry> Entries(bool inside) => inside ? Ledger.Entries : [.. Ledger.Entries.Where(entry => !entry.Inside)];
}
