using Headroom.Desk.Shown;
using Headroom.Documents.Papers;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering;

namespace Headroom.Desk.Work;

/// <summary>A studied design. What it tells late is worked out when it is asked for, by one at a time.</summary>
/// <param name="Job">The job.</param>
/// <param name="Results">What each discipline came to.</param>
/// <param name="Ledger">The ledger.</param>
/// <param name="Request">What was asked.</param>
internal sealed record StudiedDesign(Job Job, DesignResults Results, Ledger Ledger, StudyRequest Request)
{
    private readonly Lock _door = new();
    private LedgerModel? _shown;

    /// <summary>The id of the design.</summary>
    public string Id => Ledger.Design;

    /// <summary>Its ledger as pages show it.</summary>
    public LedgerModel Shown => _shown ??= LedgerModel.Of(this);

    /// <summary>What papers and drawings are made of.</summary>
    public PaperInput Input => new(Job, Results, Ledger) { Request = Request };

    /// <summary>Asks it something.</summary>
    public T Ask<T>(Func<StudiedDesign, T> ask)
    {
        lock (_door)
            return ask(this);
    }
}
