namespace Headroom.Documents.Papers;

/// <summary>All papers there are.</summary>
public static class PaperList
{
    /// <summary>The papers, in the order in which a job needs them.</summary>
    public static IReadOnlyList<PaperKind> All { get; } =
    [
        new("limits", "What is left of every limit", "client", LimitsPaper.Blocks),
        new("quotation", "Quotation", "client", Quotation.Blocks) { Without = "the job says nothing of money" },
        new("bench-sheet", "Bench sheet", "bench", BenchSheet.Blocks) { Without = "the design has no unit" },
        new("pick-list", "Pick list for the van", "site", PickList.Blocks) { Without = "the design brings nothing" },
        new("safety-sheet", "Safety sheet", "site", SafetySheet.Blocks),
        new("cabling-schedule", "Cabling schedule", "site", CablingSchedule.Blocks) { OnItsSide = true, Without = "the survey has no drops" },
        new("patch-schedule", "Patch schedule and port map", "site", PatchSchedule.Blocks) { OnItsSide = true, Without = "the design has no switch" },
        new("address-plan", "Plan of addresses and VLANs", "site", AddressSheet.Blocks) { OnItsSide = true, Without = "the survey has no plan of addresses" },
        new("power-sheet", "Power sheet", "site", PowerSheet.Blocks) { OnItsSide = true, Without = "nothing in the design gives power" },
        new("acceptance-record", "Acceptance record", "site", AcceptanceRecord.Blocks) { OnItsSide = true, Without = "there is nothing to measure" },
        new("door-sheet", "Ports behind this door", "keeps", DoorSheet.Blocks) { OnItsSide = true, Without = "the design has no switch" },
        new("maintenance", "Maintenance schedule", "keeps", MaintenanceSchedule.Blocks) { OnItsSide = true },
        new("survey-sheet", "Survey sheet", "site", HandForms.Survey) { OnItsSide = true },
        new("variation", "Variation", "client", HandForms.Variation),
        new("completion", "Certificate of completion", "client", HandForms.Completion),
        new("incident", "Incident and exchange", "site", HandForms.Incident),
        new("rack-elevations", "Racks, front and side", "site", DrawingPapers.Racks) { Without = "nothing stands in a rack" },
        new("switch-faces", "Faces of the switches", "site", DrawingPapers.Faces) { Without = "the design has no switch" },
        new("room-plans", "Rooms and what is heard in them", "site", DrawingPapers.Rooms) { Without = "no room with a size has a listener or equipment at a spot" },
        new("one-line", "The way of the watts", "keeps", DrawingPapers.OneLine) { Without = "nothing gets power over its cable" },
        new("outage-sheet", "Through an outage and back", "keeps", DrawingPapers.Outage) { Without = "nothing gets power over its cable" },
        new("labels", "Labels", "bench", LabelPaper.Blocks) { Sheets = LabelPaper.Lay, Without = "nothing in the design gets a label" },
        new("calculation-book", "Calculation book", "keeps", CalculationBook.Blocks),
        new("handover-pack", "Handover pack", "keeps", HandoverPack.Blocks) { Sheets = HandoverPack.Lay },
    ];

    /// <summary>The paper of a name; null when there is none.</summary>
    /// <param name="id">The name.</param>
    public static PaperKind? Find(string id) => All.FirstOrDefault(kind => kind.Id == id);
}
