using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Rooms;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Changes;

namespace Headroom.Desk.Moving;

/// <summary>The plan of a room: its far walls, who listens there and what stands there are moved.</summary>
/// <param name="space">The room.</param>
internal sealed class RoomBoard(string space) : IMoveBoard
{
    private const double EdgeHalf = 9;
    private const double PointHalf = 8;

    private static readonly string[] Places = ["along", "across", "above the floor"];
    private static readonly string[] Sides = ["length", "width", "height"];

    /// <inheritdoc/>
    public string Path => "drawings/rooms";

    /// <inheritdoc/>
    public string Query => $"space={Uri.EscapeDataString(space)}";

    /// <inheritdoc/>
    public IReadOnlyList<MoveThing> Things(MoveBase on) => [.. Placed(on.Studied.Job, on.Studied).Select(placed => Thing(on, placed))];

    /// <inheritdoc/>
    public MoveChanges Changes(MoveBase on, (IReadOnlyList<MoveThing> Saved, IReadOnlyList<MoveThing> Now) things, Draft draft)
    {
        var slips = new Dictionary<string, MoveSlip>();
        var changes = new List<(string, FieldChange)>();
        foreach (var (thing, saved, placed) in things.Now.Zip(things.Saved, Placed(on.Studied.Job, on.Studied)))
        {
            var sides = thing.Fields.Select(field => field.Value.Trim()).ToList();
            if (sides.SequenceEqual(saved.Fields.Select(field => field.Value)))
                continue;
            if (sides.Exists(side => side.Length == 0) && sides.Exists(side => side.Length > 0))
            {
                slips[thing.Key] = new("Give all three, or none of them.");
                continue;
            }

            var written = FieldText.Of(Lengths(on, placed).Write(sides) ?? "");
            if (written.Findings is [var finding, ..])
                slips[thing.Key] = new($"{finding.Given}; {finding.Advice}");
            else if (Change(on, placed, written.Value) is { } change)
                changes.Add((thing.Key, change));
        }

        return new(changes, slips);
    }

    /// <inheritdoc/>
    public IReadOnlyList<MovePicture> Pictures(StudiedDesign studied, IReadOnlyList<MoveThing> things)
    {
        if (studied.Ask(one => RoomPlan.Sheet(one.Input, space)) is not { } sheet)
            return [];
        var (inside, scale) = (sheet.Inside, sheet.PointsPerMetre);
        var grips = new List<MoveGrip>();
        foreach (var (thing, placed) in things.Zip(Placed(studied.Job, studied)))
        {
            var unit = Metres.Units.Find(thing.Unit) ?? Metres.Units.Shown;
            var (step, stride, digits) = MoveUnits.Of(unit);
            var across = new MoveAxis(thing.Fields[0].Name, inside.X, scale * unit.Factor, step, stride) { Digits = digits };
            var down = new MoveAxis(thing.Fields[1].Name, inside.Bottom, -scale * unit.Factor, step, stride) { Digits = digits };
            if (placed.Size)
            {
                grips.Add(new(thing.Key, $"far wall of {thing.Name}, {thing.Fields[0].Value} {thing.Unit} long", new(inside.Right - EdgeHalf, inside.Middle.Y - EdgeHalf, 2 * EdgeHalf, 2 * EdgeHalf)) { Across = across, IsEdge = true });
                grips.Add(new(thing.Key, $"upper wall of {thing.Name}, {thing.Fields[1].Value} {thing.Unit} wide", new(inside.Middle.X - EdgeHalf, inside.Y - EdgeHalf, 2 * EdgeHalf, 2 * EdgeHalf)) { Down = down, IsEdge = true });
            }
            else if (placed.Spot is { } spot)
            {
                var (x, y) = (inside.X + scale * spot.X, inside.Bottom - scale * spot.Y);
                grips.Add(new(thing.Key, $"{thing.Name}, {thing.About}: {thing.Fields[0].Value} {thing.Unit} along, {thing.Fields[1].Value} {thing.Unit} across", new(x - PointHalf, y - PointHalf, 2 * PointHalf, 2 * PointHalf)) { Across = across, Down = down, IsPoint = true });
            }
        }

        return [new("plan", sheet.Picture, SvgCanvas.Write(sheet.Picture), grips, [], sheet.Notes)];
    }

    /// <inheritdoc/>
    public IReadOnlyDictionary<string, IReadOnlyList<(string Value, string About)>> Lists(StudiedDesign studied) => new Dictionary<string, IReadOnlyList<(string, string)>>();

    // The room itself, who is in it, and what stands in it by itself: what is in a rack moves with its rack.
    private IEnumerable<OnPlan> Placed(Job job, StudiedDesign studied)
    {
        var survey = job.Survey;
        if (survey.Spaces.FirstOrDefault(one => one.Id == space) is { } room)
            yield return new(["survey", "spaces", space, "size"], space, "the room", null) { Size = true };
        foreach (var one in survey.Listeners.Where(one => one.In == space))
            yield return new(["survey", "listeners", one.Id, "at"], one.Id, "listener", one.Spot?.Value);
        foreach (var one in survey.Racks.Where(one => one.In == space))
            yield return new(["survey", "racks", one.Id, "at"], one.Id, "rack", one.Spot?.Value);
        foreach (var one in survey.Noises.Where(one => one.In == space))
            yield return new(["survey", "noises", one.Id, "at"], one.Id, "the client's own", one.Spot?.Value);
        foreach (var one in survey.Screens.Where(one => one.In == space))
        {
            yield return new(["survey", "screens", one.Id, "from"], one.Id, $"{one.Kind}, one end", one.From.Value);
            yield return new(["survey", "screens", one.Id, "to"], one.Id, $"{one.Kind}, other end", one.To.Value);
        }

        var design = studied.Results.Bound.Design;
        IEnumerable<(string Id, string What, Standing Standing)> units =
            [.. design.Switches.Select(one => (one.Id, "switch", one.Standing)), .. design.Standby.Select(one => (one.Id, "standby supply", one.Standing)), .. design.Injectors.Select(one => (one.Id, "injector", one.Standing))];
        foreach (var (id, what, standing) in units.Where(one => one.Standing.In == space && one.Standing.On is null))
            yield return new(["design", id, "at"], id, what, standing.Spot?.Value) { Written = standing.Spot?.Written };
    }

    private static MoveThing Thing(MoveBase on, OnPlan placed)
    {
        var lengths = Lengths(on, placed);
        var labels = placed.Size ? Sides : Places;
        var key = string.Join('/', placed.Path.Skip(1));
        return new(key, placed.Id, placed.Spot is null && !placed.Size ? placed.About + ", not placed yet" : placed.About, lengths.Unit.Symbol, [.. lengths.Sides.Select((side, at) => new MoveField($"{key}|{at}", labels[at], side))]);
    }

    private static LengthsText Lengths(MoveBase on, OnPlan placed) =>
        LengthsText.Read(placed.Path[0] == "design" ? placed.Written : on.Outline.ValueAt(placed.Path)) ?? LengthsText.Nothing;

    private static FieldChange? Change(MoveBase on, OnPlan placed, string? value) => placed.Path[0] == "design"
        ? UnitMoves.Of(on.Outline, on.Studied.Job, on.Studied.Id, placed.Id, ("at", value))
        : new FieldChange(placed.Path, on.Outline.ValueAt(placed.Path), value);

    private sealed record OnPlan(string[] Path, string Id, string About, Domain.Quantities.Spot? Spot)
    {
        public bool Size { get; init; }

        public string? Written { get; init; }
    }
}
