using Headroom.Documents.Layout;
using Headroom.Domain.Jobs;

namespace Headroom.Documents.Papers;

/// <summary>Forms that are filled by hand as work goes on, with what the job knows already.</summary>
internal static class HandForms
{
    private static readonly string[] HandedOver =
        ["acceptance record, every link", "power cut, with everything connected", "handover pack, on paper and as a file", "door sheet in every rack", "passwords, sealed", "instruction of", "keys and borrowed things returned", "packing and old cable taken away"];

    private static readonly string[] AfterExchange =
        ["settings restored", "watts at its ports, ordinary hour [W]", "air at its inlet, with its unit", "every device back", "door sheet and register changed"];

    /// <summary>The survey sheet: what is written down already, and room for the rest.</summary>
    public static IReadOnlyList<Block> Survey(PaperInput input)
    {
        var survey = input.Job.Survey;
        return
        [
            new Facts([("site", input.Job.Name), ("surveyed on", ""), ("by", ""), ("on site speaks", ""), ("access hours", ""), ("where to park", ""), ("line comes in at", ""), ("mains and earth point", "")]),
            new Heading("Rooms"),
            new Table(
                [new("room"), new("kind"), new("size"), new("background"), new("ceiling, finish") { Least = 90, Grows = true }, new("people, quiet need") { Least = 90 }, new("photos") { Least = 50 }],
                [.. survey.Spaces.Select(space => Written.ToFill(space.Id, space.Kind ?? "", Size(input, space), space.Background?.Written ?? "")), .. Written.Blank(4)]),
            new Heading("Outlets"),
            new Table(
                [new("no."), new("from"), new("to"), new($"length [{input.Units.Of("m").Symbol}]"), new("cable"), new("on it"), new("wall, desk, ceiling") { Least = 70 }, new("obstacle, warmth on the way") { Least = 110, Grows = true }],
                [
                    .. survey.Drops.Select(drop => Written.ToFill(
                        drop.Id, drop.From, drop.To ?? "", string.Join(" + ", drop.Pieces.Select(piece => Written.Metres(input, piece.Length?.Value.Value))),
                        string.Join(", ", drop.Pieces.Select(piece => piece.Cable ?? "?").Distinct()), string.Join(", ", survey.Endpoints.Where(endpoint => endpoint.Drop == drop.Id).Select(endpoint => endpoint.Id)))),
                    .. Written.Blank(6),
                ]),
            new Heading("Cupboard or rack"),
            new Facts([("width, depth, height", ""), ("door, walls", ""), ("outlet, its circuit", ""), ("coldest, warmest", ""), ("sound with all off", ""), ("free units", "")]),
            new Heading("Hazards, open questions"),
            new Table([new("what") { Grows = true }, new("who knows") { Least = 90 }, new("answer") { Least = 140 }], [.. Written.Blank(8)]),
        ];
    }

    private static string Size(PaperInput input, Space space) => space.Size is not { } size ? ""
        : string.Join(" x ", new double?[] { size.Value.Length, size.Value.Width, size.Value.Height }.OfType<double>().Select(side => Written.Metres(input, side))) + " " + input.Units.Of("m").Symbol;

    /// <summary>The variation sheet: what is ordered on the way, priced and signed before it is done.</summary>
    public static IReadOnlyList<Block> Variation(PaperInput input) =>
    [
        new Facts([("site", input.Job.Name), ("number", ""), ("design", input.Ledger.Design), ("asked by", ""), ("date", ""), ("reason", "")]),
        new Heading("What is changed"),
        new Table([new("what, and where") { Grows = true }, new("count") { Least = 50 }, new("price") { Least = 80 }], [.. Written.Blank(8), Written.ToFill("together, without tax") with { IsSum = true }, Written.ToFill("tax"), Written.ToFill("to pay")]),
        new Facts([("days more", ""), ("new end of work", ""), ("papers changed", ""), ("tests again", "")]),
        Written.Signed("for the firm", "for the client"),
    ];

    /// <summary>The certificate that work is done.</summary>
    public static IReadOnlyList<Block> Completion(PaperInput input) =>
    [
        new Facts([("for", input.Job.Client?.Name ?? input.Job.Name), ("site", input.Job.Name), ("design", input.Ledger.Design), ("order of", ""), ("work began", ""), ("work ended", "")]),
        new Words("What was ordered is installed, measured and handed over. What is still open stands below with the day by which it is done; it does not keep the network from being used."),
        new Heading("Handed over"),
        new Table([Written.TickColumn, new("what") { Grows = true }, new("remark") { Least = 160 }],
            [.. HandedOver.Select(what => Written.ToTick(what) with { Least = Written.HandRow })]),
        new Heading("Still open"),
        new Table([new("what") { Grows = true }, new("by whom") { Least = 80 }, new("until") { Least = 70 }], [.. Written.Blank(5)]),
        new Facts([("warranty", input.Job.Policy.Years?.Warranty?.Written ?? ""), ("it begins on", "")]),
        Written.Signed("for the firm", "for the client"),
    ];

    /// <summary>The record of an incident and of a unit exchanged, with what a claim needs.</summary>
    public static IReadOnlyList<Block> Incident(PaperInput input) =>
    [
        new Facts([("site", input.Job.Name), ("reported on, at", ""), ("reported by", ""), ("on site from, to", ""), ("what was seen", ""), ("since when", ""), ("cause", ""), ("what was done", ""), ("charged", ""), ("minutes", "")]),
        new Heading("Exchanged"),
        new Facts([("unit", ""), ("reason", ""), ("old serial number", ""), ("new serial number", ""), ("old firmware", ""), ("new firmware", ""), ("hours in service", ""), ($"air there [{input.Units.Of("°C").Symbol}]", "")]),
        new Table([Written.TickColumn, new("after it") { Grows = true }, new("before") { Least = 80 }, new("after") { Least = 80 }],
            [.. AfterExchange.Select(what => Written.ToTick(what) with { Least = Written.HandRow })]),
        new Heading("Claim"),
        new Facts([("supplier", ""), ("invoice, its date", ""), ("fault in words", ""), ("claim number", ""), ("sent on", ""), ("came back on", ""), ("result", ""), ("credit", "")]),
        Written.Signed("for the firm", "for the client"),
    ];
}
