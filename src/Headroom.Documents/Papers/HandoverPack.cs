using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Shown;
using Headroom.Engineering;

namespace Headroom.Documents.Papers;

/// <summary>The pack that the client keeps: a front with contents, whom to call and the register of devices, and behind it the papers that are needed in five years, numbered through.</summary>
internal static class HandoverPack
{
    private static readonly string[] Behind =
    [
        "door-sheet", "limits", "rack-elevations", "room-plans", "patch-schedule", "cabling-schedule", "address-plan", "power-sheet", "one-line", "uplink-tree", "standby-sheet", "outage-sheet",
        "acceptance-record", "commissioning-record", "safety-sheet", "maintenance",
    ];

    /// <summary>The front alone, with contents but without their sheets.</summary>
    public static IReadOnlyList<Block> Blocks(PaperInput input) => Front(input, [.. Papers(input).Select(paper => (paper.Title, 0))]);

    /// <summary>The whole pack.</summary>
    /// <param name="front">Its front, as made by its kind.</param>
    /// <param name="input">The studied design.</param>
    /// <param name="size">The sheets, upright.</param>
    public static IReadOnlyList<LaidSheet> Lay(Paper front, PaperInput input, SheetSize size)
    {
        var papers = Papers(input).ToList();
        var counts = papers.ConvertAll(paper => Layouter.Lay(paper, size).Count);
        var first = Layouter.Lay(front, size).Count;
        var of = first + counts.Sum();
        var at = first + 1;
        var contents = new List<(string Title, int Sheet)>();
        foreach (var (paper, count) in papers.Zip(counts))
        {
            contents.Add((paper.Title, at));
            at += count;
        }

        // The numbers of sheets stand where empty ones stood, so that the front takes as many sheets as before.
        var sheets = Layouter.Lay(front with { Blocks = Front(input, contents) }, size, (1, of)).ToList();
        for (var i = 0; i < papers.Count; i++)
        {
            var laid = Layouter.Lay(papers[i], size, (contents[i].Sheet, of));
            sheets.AddRange(laid.Select((sheet, n) => n == 0 ? sheet with { Chapter = papers[i].Title } : sheet));
        }

        return sheets;
    }

    private static IEnumerable<Paper> Papers(PaperInput input) => Behind.Select(id => PaperList.Find(id)!.Of(input)).OfType<Paper>().Select(paper => paper with { Head = null });

    private static IReadOnlyList<Block> Front(PaperInput input, IReadOnlyList<(string Title, int Sheet)> contents) =>
    [
        new Facts([("for", input.Job.Client?.Name ?? input.Job.Name), ("handed over on", ""), ("site", input.Job.Name), ("design", input.Ledger.Design), ("as of", input.Day), ("by", input.Firm?.Name ?? "")]),
        new Heading("Contents"),
        new Table([new("paper") { Grows = true }, new("sheet", Anchor.End) { Least = 40 }], [.. contents.Select(one => Row.Of(one.Title, one.Sheet > 0 ? Numbers.Show(one.Sheet) : "")), Row.Of("Calculation book, with the working and the source of every limit", "own file")]),
        new Heading("Whom to call"),
        new Table([new("for") { Least = 150 }, new("name") { Least = 120, Grows = true }, new("number") { Least = 120 }],
            [Written.ToFill("network, in working hours", input.Firm?.Name ?? "", FirmOnPapers.Phone(input)), Written.ToFill("network, out of hours"), Written.ToFill("the line out of the house"), Written.ToFill("electrician"), Written.ToFill("keys and alarm")]),
        new Words("Passwords stand on no paper here. They were handed over sealed, to:"),
        new Facts([("name", ""), ("kept at", ""), ("on", ""), ("opened on, by", "")]),
        .. Register(input),
        new Heading("Changes since"),
        new Table([new("date") { Least = 60 }, new("what was changed, and which papers with it") { Grows = true }, new("by") { Least = 70 }], [.. Written.Blank(8)]),
    ];

    private static IEnumerable<Block> Register(PaperInput input)
    {
        var names = new DeviceNames(input);
        var ends = Study.Due(input.Job, input.Results.Bound.Catalogue, input.Request, 30).Where(due => due is { What: "warranty ends", On: not null }).GroupBy(due => due.Subject).ToDictionary(group => group.Key, group => group.First().On!.Value);
        List<Row> rows =
        [
            .. PlacedUnit.Of(input).Select(unit => Row.Of(unit.Id, unit.Kind, unit.Body?.Id ?? "", unit.Where(input.Job), names.Address(unit.Id), ends.TryGetValue(unit.Id, out var end) ? Written.Day(end) : "")),
            .. input.Results.Bound.Endpoints.Where(endpoint => endpoint.Model.Kind != "other").Select(endpoint => Row.Of(endpoint.Id, endpoint.Model.Kind, endpoint.Model.Id, endpoint.Run?.Drop.To ?? endpoint.Endpoint.Near ?? "", names.Address(endpoint.Id))),
        ];
        yield return new Heading("Register of devices");
        yield return new Table([new("device"), new("what"), new("model"), new("where") { Grows = true }, new("address"), new("warranty ends"), new("serial number") { Least = 80 }, new("firmware") { Least = 54 }], rows);
    }
}
