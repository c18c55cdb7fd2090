namespace Headroom.Documents.Papers;

/// <summary>All papers there are.</summary>
public static class PaperList
{
    /// <summary>The papers, in the order in which a job needs them.</summary>
    public static IReadOnlyList<PaperKind> All { get; } =
    [
        new("limits", "What is left of every limit", "client", LimitsPaper.Blocks),
        new("cabling-schedule", "Cabling schedule", "site", CablingSchedule.Blocks) { OnItsSide = true, Without = "the survey has no drops" },
        new("patch-schedule", "Patch schedule and port map", "site", PatchSchedule.Blocks) { OnItsSide = true, Without = "the design has no switch" },
        new("calculation-book", "Calculation book", "keeps", CalculationBook.Blocks),
    ];

    /// <summary>The paper of a name; null when there is none.</summary>
    /// <param name="id">The name.</param>
    public static PaperKind? Find(string id) => All.FirstOrDefault(kind => kind.Id == id);
}
