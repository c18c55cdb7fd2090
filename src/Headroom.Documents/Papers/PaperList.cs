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
        new("rack-elevations", "Racks, front and side", "site", DrawingPapers.Racks) { Without = "nothing stands in a rack" },
        new("switch-faces", "Faces of the switches", "site", DrawingPapers.Faces) { Without = "the design has no switch" },
        new("room-plans", "Rooms and what is heard in them", "site", DrawingPapers.Rooms) { Without = "no room with a size has a listener or equipment at a spot" },
        new("power-sheet", "The way of the watts", "keeps", DrawingPapers.OneLine) { Without = "nothing gets power over its cable" },
        new("outage-sheet", "Through an outage and back", "keeps", DrawingPapers.Outage) { Without = "nothing gets power over its cable" },
        new("calculation-book", "Calculation book", "keeps", CalculationBook.Blocks),
    ];

    /// <summary>The paper of a name; null when there is none.</summary>
    /// <param name="id">The name.</param>
    public static PaperKind? Find(string id) => All.FirstOrDefault(kind => kind.Id == id);
}
