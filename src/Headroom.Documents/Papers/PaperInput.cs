using Headroom.Documents.Layout;
using Headroom.Domain.Firms;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Plans;
using Headroom.Domain.Shown;
using Headroom.Engineering;

namespace Headroom.Documents.Papers;

/// <summary>What papers are written from: one studied design of a job.</summary>
/// <param name="Job">The job.</param>
/// <param name="Results">What every discipline made of the design.</param>
/// <param name="Ledger">Its ledger.</param>
public sealed record PaperInput(Job Job, DesignResults Results, Ledger Ledger)
{
    private const int MostOfName = 60;

    /// <summary>What was asked of the study; by default the whole of it, on the day of the ledger.</summary>
    public StudyRequest Request { get => field ?? new(Ledger.Design, Ledger.On, [], null); init; }

    /// <summary>Designs to choose between, as the planner found them; null when nothing was planned.</summary>
    public Plan? Plan { get; init; }

    /// <summary>Values at which the cheapest design changes; empty when nothing was turned.</summary>
    public IReadOnlyList<TurningPoint> Turns { get; init; } = [];

    /// <summary>The firm that writes; null when nobody has said, and then no paper says anything of one.</summary>
    public Firm? Firm { get; init; }

    /// <summary>The running number of a quotation; null when it is filled by hand.</summary>
    public string? QuoteCount { get; init; }

    /// <summary>The firm's head; null when nobody has given any.</summary>
    public Letterhead? Head => Firm is { } firm ? FirmOnPapers.Head(firm) : null;

    /// <summary>The units in which figures are shown.</summary>
    public ShownUnits Units { get; init; } = ShownUnits.Metric;

    /// <summary>The day, as papers write it: as the firm has it, else day, month in letters, year, so that nobody takes one for the other.</summary>
    public string Day => Written.Day(Ledger.On);

    /// <summary>What stands at the foot of every sheet.</summary>
    public string Foot => $"{(Firm is { } firm ? FirmOnPapers.Short(firm) + " · " : "")}{Cut(Job.Name)} · design {Ledger.Design} · {Day}";

    /// <summary>The entries that may be seen: inside ones only where the paper stays inside.</summary>
    /// <param name="inside">True for a paper for the firm's own eyes.</param>
    public IReadOnlyList<LedgerEntry> Entries(bool inside) => inside ? Ledger.Entries : [.. Ledger.Entries.Where(entry => !entry.Inside)];

    /// <summary>The designs of the job, this one first, each studied as this one was.</summary>
    /// <param name="most">How many at most; at least 1.</param>
    public IReadOnlyList<PaperInput> SideBySide(int most)
    {
        var others = Job.Designs.Select(design => design.Id).Where(id => id != Ledger.Design).Take(most - 1);
        return [this, .. others.Select(Of)];
    }

    // What stands behind a long name at the foot of a sheet must be read too.
    private static string Cut(string name) => name.Length <= MostOfName ? name : $"{name[..(char.IsHighSurrogate(name[MostOfName - 1]) ? MostOfName - 1 : MostOfName)].TrimEnd()}…";

    private PaperInput Of(string design)
    {
        var request = Request with { Design = design };
        var catalogue = Results.Bound.Catalogue;
        var results = Study.Results(Job, catalogue, request);
        return this with { Results = results, Ledger = Study.LedgerOf(results, request), Request = request };
    }
}
