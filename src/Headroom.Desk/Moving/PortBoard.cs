using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Ports;
using Headroom.Documents.Drawings.Racks;
using Headroom.Domain.Jobs;
using Headroom.Engineering;
using Headroom.JobFiles.Changes;

namespace Headroom.Desk.Moving;

/// <summary>Switch faces and racks: cords are moved from port to port, and units up and down.</summary>
internal sealed class PortBoard : IMoveBoard
{
    private const string Ports = "ports";
    private const string Cord = "cord/";
    private const string Unit = "unit/";

    /// <inheritdoc/>
    public string Path => "drawings/ports";

    /// <inheritdoc/>
    public string Query => "";

    /// <inheritdoc/>
    public IReadOnlyList<MoveThing> Things(MoveBase on)
    {
        var studied = on.Studied;
        var bound = studied.Results.Bound;
        var port = bound.Design.Patch.GroupBy(cord => cord.What).ToDictionary(cord => cord.Key, cord => cord.First().To.ToString());
        var devices = bound.Endpoints.Where(one => one.Endpoint.Drop is not null).GroupBy(one => one.Endpoint.Drop!).ToDictionary(group => group.Key, group => group.First().Id);
        // What an uplink runs on is no cord of its own.
        var links = (bound.Design.Uplinks ?? []).Select(link => link.Drop).OfType<string>().ToHashSet();
        var names = bound.Design.Patch.Select(cord => cord.What).Concat(studied.Job.Survey.Drops.Select(drop => drop.Id).Where(drop => !links.Contains(drop))).Distinct();
        return
        [
            .. names.Select(name => new MoveThing(Cord + name, name, devices.GetValueOrDefault(name) ?? "", "", [new(Cord + name, "port", port.GetValueOrDefault(name) ?? "") { List = Ports, Hint = "not patched" }])),
            .. studied.Results.Racking.Racks.SelectMany(rack => rack.Places).Where(place => place.Thing.Fills > 0).Select(place => new MoveThing(
                Unit + place.Thing.Id, place.Thing.Id, place.Thing.Kind == place.Thing.Id ? "" : place.Thing.Kind, "U", [new(Unit + place.Thing.Id, "lowest unit", place.IsProposed || place.Lowest is null ? "" : $"{place.Lowest}") { Hint = place.Lowest is { } lowest ? $"proposed {lowest}" : "no place" }])),
        ];
    }

    /// <inheritdoc/>
    public MoveChanges Changes(MoveBase on, (IReadOnlyList<MoveThing> Saved, IReadOnlyList<MoveThing> Now) things, Draft draft)
    {
        var saved = things.Saved.ToDictionary(thing => thing.Key, thing => thing.Fields[0].Value);
        var slips = Taken(things.Now, saved, draft);
        var changes = new List<(string, FieldChange)>();
        var elsewhere = on.Studied.Job.Designs.First(design => design.Id == on.Studied.Id).Like is { } like ? Study.DesignOf(on.Studied.Job, like)?.Patch.Select(cord => cord.What).ToHashSet() ?? [] : [];
        var moved = things.Now.Where(thing => !slips.ContainsKey(thing.Key) && thing.Fields[0].Value.Trim() != saved[thing.Key]).ToList();
        var cords = new Dictionary<string, string?>();
        foreach (var thing in moved)
        {
            var typed = FieldText.Of(thing.Fields[0].Value);
            if (typed.Findings is [var finding, ..])
                slips[thing.Key] = new($"{finding.Given}; {finding.Advice}");
            else if (IsCord(thing.Key))
                cords[thing.Name] = typed.Value;
            else if (UnitMoves.Of(on.Outline, on.Studied.Job, on.Studied.Id, thing.Name, ("unit", typed.Value)) is { } change)
                changes.Add((thing.Key, change));
        }

        // A range that falls apart makes several changes, all of the cord that is moved.
        foreach (var change in CordMoves.Of(on.Outline, on.Studied.Id, cords, elsewhere))
            changes.Add((Cord + (cords.ContainsKey(change.Path[^1]) ? change.Path[^1] : cords.Keys.First()), change));
        return new(changes, slips);
    }

    /// <inheritdoc/>
    public IReadOnlyList<MovePicture> Pictures(StudiedDesign studied, IReadOnlyList<MoveThing> things) => studied.Ask(one =>
    {
        var named = things.ToDictionary(thing => thing.Key);
        var patch = one.Results.Bound.Design.Patch.Where(cord => named.ContainsKey(Cord + cord.What)).GroupBy(cord => cord.To.ToString()).ToDictionary(cords => cords.Key, cords => cords.First().What);
        return (List<MovePicture>)
        [
            .. one.Results.Bound.Switches.Select(unit => Face(one, unit.Id, patch, named)).OfType<MovePicture>(),
            .. RackElevation.Racks(one.Input).Select(rack => Rack(one, rack, named)).OfType<MovePicture>(),
        ];
    });

    /// <inheritdoc/>
    public IReadOnlyDictionary<string, IReadOnlyList<(string Value, string About)>> Lists(StudiedDesign studied)
    {
        var bound = studied.Results.Bound;
        var on = bound.Design.Patch.GroupBy(cord => cord.To.ToString()).ToDictionary(cords => cords.Key, cords => cords.First().What);
        List<(string, string)> ports =
        [
            .. bound.Switches.SelectMany(unit => unit.Model.Ports.SelectMany(group => Enumerable.Range(group.First, group.Last - group.First + 1)).Select(number => new PortRef(unit.Id, number).ToString()))
                .Concat(bound.Injectors.SelectMany(unit => unit.Model.Ports > 1 ? Enumerable.Range(1, unit.Model.Ports).Select(number => new PortRef(unit.Id, number).ToString()) : [unit.Id]))
                .Select(port => (port, on.GetValueOrDefault(port) ?? "free")),
        ];
        return new Dictionary<string, IReadOnlyList<(string, string)>> { [Ports] = ports };
    }

    private static bool IsCord(string key) => key.StartsWith(Cord, StringComparison.Ordinal);

    // Of two cords on one port the one that was moved there is refused, and may take the other's place while that takes its own.
    private static Dictionary<string, MoveSlip> Taken(IReadOnlyList<MoveThing> things, Dictionary<string, string> saved, Draft draft)
    {
        var slips = new Dictionary<string, MoveSlip>();
        foreach (var port in things.Where(thing => IsCord(thing.Key) && thing.Fields[0].Value.Trim().Length > 0).GroupBy(thing => thing.Fields[0].Value.Trim()).Where(port => port.Count() > 1))
        {
            var come = port.Where(thing => port.Key != Last(thing.Key)).ToList();
            foreach (var thing in come.Count == 0 ? port.Skip(1) : come)
            {
                var other = port.First(one => one != thing);
                var said = $"{other.Name}{(other.About.Length > 0 ? $" ({other.About})" : "")} is on {port.Key} already; a port takes one cord.";
                slips[thing.Key] = come is [_] && port.Count() == 2 && Last(thing.Key) is { Length: > 0 } free ? new(said, $"Swap {thing.Name} and {other.Name}", $"put|{other.Key}|{free}") : new(said + " Choose another, or move that first.");
            }
        }

        return slips;

        string Last(string key) => draft.Now.GetValueOrDefault(key) ?? saved[key];
    }

    private static MovePicture? Face(StudiedDesign studied, string unit, Dictionary<string, string> patch, Dictionary<string, MoveThing> named)
    {
        if (SwitchFace.Of(studied.Input, unit) is not { } picture)
            return null;
        var places = SwitchFace.Places(studied.Input, unit).Select(place => (Name: $"{unit}/{place.Number}", place.Box)).ToList();
        var grips = places.Where(place => patch.ContainsKey(place.Name)).Select(place => (place, Thing: named[Cord + patch[place.Name]]))
            .Select(one => new MoveGrip(one.Thing.Key, $"{one.Thing.Name}{(one.Thing.About.Length > 0 ? $", {one.Thing.About}" : "")}: on {one.place.Name}", one.place.Box) { Onto = one.Thing.Fields[0].Name }).ToList();
        return new("face-" + unit, picture, SvgCanvas.Write(picture), grips, places, []);
    }

    private static MovePicture? Rack(StudiedDesign studied, string rack, Dictionary<string, MoveThing> named)
    {
        if (RackElevation.Of(studied.Input, rack) is not { } picture || RackElevation.Rails(studied.Input, rack) is not { } rails)
            return null;
        // A thing is held by its lower edge: unit 1 lies on the bottom.
        var grips = rails.Things.Where(thing => named.ContainsKey(Unit + thing.Id)).Select(thing => new MoveGrip(Unit + thing.Id, $"{thing.Id}: from unit {thing.Lowest}{(thing.IsProposed ? ", proposed" : "")}", thing.Box)
        {
            Down = new(named[Unit + thing.Id].Fields[0].Name, rails.Front.Bottom - thing.Box.Height / 2, -rails.Unit, 1, 3) { First = 1 },
        }).ToList();
        return new("rack-" + rack, picture, SvgCanvas.Write(picture), grips, [], []);
    }
}
