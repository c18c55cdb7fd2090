using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Shown;
using Headroom.Engineering.Binding;

namespace Headroom.Documents.Papers;

/// <summary>What goes into the van, box by box, each line to tick.</summary>
internal static class PickList
{
    /// <summary>What stands on it; null when nothing is to be brought.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        List<(string Box, Column[] Columns, List<Row> Rows)> boxes =
        [
            ("Units", [Written.TickColumn, new("unit"), new("what"), new("model"), new("stands in"), new("remark") { Grows = true }], Units(input)),
            ("Devices", [Written.TickColumn, new("count", Anchor.End), new("what"), new("model"), new("which") { Grows = true }], Devices(input)),
            ("Modules", [Written.TickColumn, new("count", Anchor.End), new("model"), new("for") { Grows = true }], Modules(input)),
            ("Cable", [Written.TickColumn, new("boxes", Anchor.End), new("cable"), new($"length with waste [{input.Units.Of("m").Symbol}]", Anchor.End), new("remark") { Grows = true }], Cables(input)),
            ("Cords", [Written.TickColumn, new("count", Anchor.End), new("cord"), new($"length [{input.Units.Of("m").Symbol}]", Anchor.End), new("end"), new("for") { Grows = true }], Cords(input)),
            ("Rack", [Written.TickColumn, new("what"), new("name"), new("stands in"), new("remark") { Grows = true }], Fittings(input)),
        ];
        var filled = boxes.Where(box => box.Rows.Count > 0).ToList();
        if (filled.Count == 0)
            return null;
        var blocks = filled.SelectMany((box, i) => new Block[] { new Heading($"Box {i + 1}: {box.Box.ToLowerInvariant()}"), new Table(box.Columns, box.Rows) }).ToList();
        blocks.AddRange(Sundries(input, filled.Count + 1));
        return blocks;
    }

    private static List<Row> Units(PaperInput input) =>
        [.. PlacedUnit.Of(input).Select(unit => Written.ToTick(unit.Id, unit.Kind, unit.Body?.Id ?? "model not said", unit.Where(input.Job), unit.Standing.Since is { } since ? $"there since {Written.Day(since)}" : unit.Body?.Weight is { } weight ? Written.InUnits(input, weight.Value.Value, "kg") : ""))];

    private static List<Row> Devices(PaperInput input) =>
        [.. input.Results.Bound.Endpoints.Where(endpoint => endpoint.Model.Kind != "other" && !IsTheirs(input, endpoint)).GroupBy(endpoint => endpoint.Model.Id)
            .Select(group => Written.ToTick(Numbers.Show(group.Count()), group.First().Model.Kind, group.Key, Which([.. group.Select(endpoint => endpoint.Id)])))];

    private static bool IsTheirs(PaperInput input, BoundEndpoint endpoint) =>
        input.Job.Money is { } money && (money.LeaveOut.Contains(endpoint.Model.Id) || money.LeaveOut.Contains(endpoint.Id));

    private static List<Row> Modules(PaperInput input)
    {
        var ends = (input.Results.Bound.Design.Uplinks ?? []).Where(link => link.Module is not null).SelectMany(link =>
            link.To.Port is null || link.Media == "direct" ? new[] { (Model: link.Module!, For: link.From.ToString()) } : [(link.Module!, link.From.ToString()), (link.FarModule ?? link.Module!, link.To.ToString())]);
        return [.. ends.GroupBy(end => end.Model).Select(group => Written.ToTick(Numbers.Show(group.Count()), group.Key, string.Join(", ", group.Select(end => end.For))))];
    }

    private static List<Row> Cables(PaperInput input) => [.. input.Results.Cabling.Totals.Select(total =>
    {
        var least = total.NotKnown.Count > 0 ? "at least " : "";
        var remark = total.NotKnown.Count > 0 ? $"how long is {Which(total.NotKnown)}?" : total.IsFibre ? "cut to order" : $"longest {Numbers.Show(input.Units.Of("m").Value(total.Lengths.Max())!.Value, input.Units.Of("m").Symbol)}";
        return Written.ToTick(total.IsFibre ? "" : least + Numbers.Show(total.Boxes), total.Cable, least + Whole(input.Units.Of("m").Value(total.Metres)!.Value), remark);
    })];

    private static List<Row> Cords(PaperInput input)
    {
        var cords = input.Results.Bound.Runs.Where(run => !run.IsFibre && run.Pieces.Any(piece => piece.Cord)).SelectMany(run => new[]
        {
            (End: "panel", Cord: run.Drop.CordAtPanel, Drop: run.Drop.Id),
            (End: "device", Cord: run.Drop.CordAtDevice, Drop: run.Drop.Id),
        });
        return [.. cords.GroupBy(cord => (cord.End, Model: cord.Cord?.Cable ?? "", Metres: cord.Cord?.Length?.Value.Value))
            .OrderBy(group => group.Key.End).ThenBy(group => group.Key.Metres ?? double.MaxValue)
            .Select(group => Written.ToTick(
                Numbers.Show(group.Count()), group.Key.Model.Length > 0 ? group.Key.Model : "not said", group.Key.Metres is null ? "measure" : Written.Metres(input, group.Key.Metres), group.Key.End,
                Which([.. group.Select(cord => cord.Drop)])))];
    }

    private static List<Row> Fittings(PaperInput input) => [.. input.Results.Bound.Design.Fittings.Select(fitting => Written.ToTick(
        fitting.Kind, fitting.Id, fitting.Standing.In is { } place ? $"{place}{(fitting.Standing.Unit is { } unit ? $", unit {Numbers.Show(unit)}" : "")}" : "",
        fitting.Places is { } places ? Written.Count(places, "place") : ""))];

    private static IEnumerable<Block> Sundries(PaperInput input, int box)
    {
        var laid = input.Results.Bound.Runs.Count(run => !run.Drop.Existing);
        yield return new Heading($"Box {box}: sundries");
        yield return new Table(
            [Written.TickColumn, new("count") { Least = 46 }, new("what") { Grows = true }],
            [
                Written.ToTick(laid > 0 ? Numbers.Show(2 * laid) : "", "cable labels, one for each end of what is laid"),
                Written.ToTick(laid > 0 ? Numbers.Show(laid) : "", "outlets with frames and blocks"),
                Written.ToTick("", "cage nuts, screws and washers for the rack"), Written.ToTick("", "hook tape; no hard ties on data cable"),
                Written.ToTick("", "fire stop for every wall that is passed"), Written.ToTick("", "tester with charged battery, multimeter, thermometer"),
                Written.ToTick("", "printed papers: patch schedule, cabling schedule, acceptance record, safety sheet, door sheet"), .. Enumerable.Repeat(Written.ToTick("", ""), 3),
            ]);
        yield return new Words("Counts follow from survey and design. What the client has already, and what lies in the van, is struck out by hand.", Lettering.Label);
    }

    private const int MostNames = 12;

    private static string Which(IReadOnlyList<string> names) => names.Count <= MostNames ? string.Join(", ", names) : $"{string.Join(", ", names.Take(MostNames))} and {names.Count - MostNames} more";

    private static string Whole(double length) => Numbers.Show(Math.Ceiling(length));
}
