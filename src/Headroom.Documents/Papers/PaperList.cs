using Headroom.Documents.Drawings;

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
        new("installation-specification", "Installation specification", "client", InstallationSpecification.Blocks) { Without = "the survey has no drops" },
        new("bill-of-materials", "Bill of materials", "inside", BillOfMaterials.Blocks) { OnItsSide = true, Without = "the job says nothing of money; the pick list has the counts" },
        new("orders", "Orders by supplier", "inside", BillOfMaterials.Orders) { Without = "the job says nothing of money" },
        new("goods-in", "Goods in", "bench", GoodsIn.Blocks) { OnItsSide = true, Without = "the design brings nothing" },
        new("standby-sheet", "Standby sheet", "site", StandbySheet.Blocks) { Without = "the design has no standby supply" },
        new("sound-sheet", "Sound sheet", "site", SoundSheet.Blocks) { OnItsSide = true, Without = "the survey has no listener" },
        new("commissioning-record", "Commissioning record", "site", CommissioningRecord.Blocks) { OnItsSide = true, Without = "the design has no switch" },
        new("final-account", "Final account", "client", _ => null) { AsFile = FinalAccount.Write, Without = "the job says nothing of money" },
        new("monthly-review", "Monthly review", "inside", MonthlyReview.Blocks),
        new("design-choice", "Why this design", "inside", DesignChoice.Blocks) { Needs = [PlannedFor.Designs, PlannedFor.Turns], Without = "for the planner takes its time: name it with --only" },
        new("rack-elevations", "Racks, front and side", "site", DrawingPapers.Racks) { Without = "nothing stands in a rack" },
        new("switch-faces", "Faces of the switches", "site", DrawingPapers.Faces) { Without = "the design has no switch" },
        new("room-plans", "Rooms and what is heard in them", "site", DrawingPapers.Rooms) { Without = "no room with a size has a listener or equipment at a spot" },
        new("one-line", "The way of the watts", "keeps", DrawingPapers.OneLine) { Without = "nothing gets power over its cable" },
        new("outage-sheet", "Through an outage and back", "keeps", DrawingPapers.Outage) { Without = "nothing gets power over its cable" },
        new("uplink-tree", "Uplinks and the line", "keeps", DrawingPapers.Uplinks) { Without = "no switch has an uplink or a line" },
        new("air-sheet", "Fans and cupboards", "site", DrawingPapers.Air) { Without = "neither of a fan nor of a cupboard enough is known" },
        new("labels", "Labels", "bench", LabelPaper.Blocks) { Sheets = LabelPaper.Lay, Without = "nothing in the design gets a label" },
        new("calculation-book", "Calculation book", "keeps", CalculationBook.Blocks),
        new("handover-pack", "Handover pack", "keeps", HandoverPack.Blocks) { Sheets = HandoverPack.Lay },
    ];

    /// <summary>The paper of a name; null when there is none.</summary>
    /// <param name="id">The name.</param>
    public static PaperKind? Find(string id) => All.FirstOrDefault(kind => kind.Id == id);
}
