using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Plates;
using Headroom.Documents.Layout;
using Headroom.Domain.Jobs;
using Headroom.Domain.Shown;
using Headroom.Engineering.Cabling;

namespace Headroom.Documents.Papers;

/// <summary>The installation specification: what is agreed before a cable is laid, by which standards, what is tested, labelled and written down.</summary>
internal static class InstallationSpecification
{
    private const double Agreed = 150;

    // Titles from the trade; which edition binds is agreed on site, so none is printed.
    private static readonly (string What, string By)[] Standards =
    [
        ("planning and practice of the installation", "ISO/IEC 14763-2, or the EN 50174 series, or TIA-568.0 and TIA-569"),
        ("links of copper and fibre", "ISO/IEC 11801 series, or EN 50173 series, or TIA-568 series"),
        ("testing of copper links", "IEC 61935-1, or TIA-1152-A"),
        ("testing of fibre links", "ISO/IEC 14763-3, or TIA-526 series"),
        ("power over the cable, bundles", "IEEE 802.3; ISO/IEC TS 29125, or TIA TSB-184-A, or EN 50174-2"),
        ("bonding and earthing", "EN 50310, or ISO/IEC 30129, or TIA-607-D"),
        ("labels and records", "ISO/IEC 14763-2, or TIA-606"),
        ("mains, fire stops, work at height", "the local code"),
    ];

    /// <summary>What stands on it; null without drops.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        if (input.Results.Bound.Runs.Count == 0)
            return null;
        return
        [
            new Facts([("for", input.Job.Client?.Name ?? input.Job.Name), ("site", input.Job.Name), ("design", input.Ledger.Design), ("agreed on", ""), ("part of order", ""), ("revision", "")]),
            new Words("This is agreed before work begins. Where it and the offer differ, what is written later and signed by both counts."),
            new Heading("Standards"),
            new Table([new("for"), new("one of these, as the country has it") { Grows = true }, new("agreed: which, with edition") { Least = Agreed }], [.. Standards.Select(one => Written.ToFill(one.What, one.By))]),
            .. Links(input),
            .. Ways(input),
            new Heading("Testing"),
            new Table([new("what") { Least = 150 }, new("proposed") { Grows = true }, new("agreed") { Least = 120 }],
            [
                Written.ToFill("permanent link or channel", "permanent link; one limit for all links of a class"),
                Written.ToFill("how many", "every link that is laid; of what lies there already every link that is used"),
                Written.ToFill("results near the limit", "told apart, repaired or accepted in writing"),
                Written.ToFill("tester", "calibrated within the year, newest limits, name of the link as on the panel, letter by letter"),
                Written.ToFill("fibre", "loss in both directions, one-cord reference, faces looked at first"),
                Written.ToFill("power and restart", "volts at the devices, watts at the ports, one power cut with everything connected"),
            ]),
            new Heading("Labels and records"),
            new Table([new("what") { Least = 150 }, new("proposed") { Grows = true }, new("agreed") { Least = 120 }],
            [
                Written.ToFill("cables", $"as the cabling schedule names them, such as {input.Results.Bound.Runs[0].Drop.Id}, at both ends, printed"),
                Written.ToFill("panels, outlets, units", "the same names on front, outlet and paper"),
                Written.ToFill("handed over", "cabling and patch schedules as built, test results as files, plans, door sheet, handover pack"),
                Written.ToFill("bonding", "racks, trays and screens to the point the electrician names; screened links at the end agreed"),
                Written.ToFill("fire stops", "every wall and floor that is passed, with a system allowed there, photographed"),
                Written.ToFill("access and hours", ""), Written.ToFill("waste, dust, noise", ""),
            ]),
            .. Cautions(input),
            Written.Signed("for the firm", "for the client"),
        ];
    }

    private static IEnumerable<Block> Links(PaperInput input)
    {
        var catalogue = input.Results.Bound.Catalogue;
        var metres = input.Units.Of("m").Symbol;
        yield return new Heading("Links");
        yield return new Table(
            [new("cable") { Grows = true }, new("category"), new("screen"), new("conductor"), new("links", Anchor.End), new($"longest [{metres}]", Anchor.End), new("laid new", Anchor.End), new("class agreed") { Least = 90 }],
            [.. input.Results.Cabling.Runs.GroupBy(run => string.Join(", ", run.Run.Pieces.Where(piece => !piece.Cord).Select(piece => piece.Cable ?? "not said").Distinct())).OrderBy(group => group.Key, StringComparer.Ordinal).Select(group =>
            {
                var model = catalogue.Cables.GetValueOrDefault(group.Key);
                var known = group.Where(run => run.Unknown == 0).Select(run => run.LinkMetres).ToList();
                return Written.ToFill(
                    group.Key, model?.Category ?? "?", model?.Screened switch { true => "yes", false => "no", _ => "?" }, model?.Conductor?.Written ?? "?", Numbers.Show(group.Count()),
                    known.Count == 0 ? "?" : (known.Count < group.Count() ? "at least " : "") + Written.Metres(input, known.Max()), Numbers.Show(group.Count(run => !run.Run.Drop.Existing)));
            })]);
        foreach (var run in input.Results.Cabling.Runs.Where(run => run.Unknown > 0).Take(4))
            yield return new Words($"How long is {run.Id}? Pace the route, or read the metre marks on the sheath.", Lettering.Body with { Face = Face.Slanted });
    }

    private static IEnumerable<Block> Ways(PaperInput input)
    {
        if (input.Job.Survey.Pathways.Count == 0)
            yield break;
        yield return new Heading("Ways");
        yield return new Table(
            [new("way"), new("kind"), new("inside"), new("mains beside it") { Grows = true }, new("between them"), new("apart"), new("longest pull, bends"), new("as found, by") { Least = 80 }],
            [.. input.Job.Survey.Pathways.Select(way => Way(input, way))]);
        var ways = input.Job.Survey.Pathways.Select(way => way.Id).ToHashSet();
        var limits = input.Entries(inside: false).Where(entry => entry.Discipline == CablingLedger.Discipline && ways.Contains(entry.Subject)).ToList();
        if (limits.Count > 0)
        {
            yield return EntryTable.Of(limits, input.Units);
            yield return EntryTable.Legend;
        }
    }

    private static Row Way(PaperInput input, Pathway way) => Written.ToFill(
        way.Id, way.Kind, way.Inside is { } inside ? Dimension.OfThing(inside.Value.Value, input.Units) : way.Area?.Written ?? "?",
        way.MainsBeside is not { } mains ? "?" : mains.Count == 0 ? "none" : string.Join(", ", mains.Select(Circuits)),
        way.Barrier ?? (way.MainsBeside is { Count: 0 } ? "" : "?"), way.Apart is { } apart ? Dimension.OfThing(apart.Value.Value, input.Units) : way.MainsBeside is { Count: 0 } ? "" : "?",
        string.Join(", ", new[] { way.LongestPull is { } pull ? Written.InUnits(input, pull.Value.Value, "m") : null, way.Bends is { } bends ? Written.Count(bends, "bend") : null }.OfType<string>()) is { Length: > 0 } told ? told : "?");

    private static string Circuits(MainsCircuits circuits) => $"{Written.Count(circuits.Count, "circuit")}{(circuits.Rating is { } rating ? $" of {rating.Written}" : "")}{(circuits.ThreePhase ? ", three-phase" : "")}";

    private static IEnumerable<Block> Cautions(PaperInput input)
    {
        yield return new Heading("Safety");
        yield return new Words("Mains, earthing and fire stops are done or released by people licensed for it; local codes decide. Nobody works alone in a loft or on a ladder, and nobody looks into a fibre.");
        var cautions = input.Entries(inside: false).Where(entry => entry.Discipline == CablingLedger.Discipline).SelectMany(entry => entry.Cautions).DistinctBy(caution => caution.Code).OrderBy(caution => caution.Code, StringComparer.Ordinal).ToList();
        if (cautions.Count > 0)
            yield return new Table([new("to be heeded") { Grows = true }, new("who may do it") { Least = 120 }], [.. cautions.Select(caution => Row.Of(caution.Text, caution.Who))]);
    }
}
