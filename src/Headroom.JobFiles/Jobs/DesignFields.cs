using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>The answers.</summary>
internal static class DesignFields
{
    private static readonly Field<string> Like = new("like", Shapes.Name("a design"), "The design it starts from; then only what differs is written.", "as-quoted");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, OrNone<PlacedSwitch>>>> Switches = new(
        "switches", () => Units("switch", SwitchFields.Shape, "sw-1"), "The switches; 'none' behind a name takes one away.", "{sw-1: {model: wren-b, in: A, unit: 3}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, OrNone<PlacedInjector>>>> Injectors = new(
        "injectors", () => Units("injector", UnitFields.Injector, "inj-1"), "Injectors and midspans; 'none' behind a name takes one away.", "{inj-1: {model: inlet, in: cupboard, from: sw-1/9}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, OrNone<PlacedInjector>>>> Midspans = new(
        "midspans", () => Units("injector", UnitFields.Injector, "mid-1"), "The same as injectors.", "{mid-1: {model: inlet-8, from: sw-1/9..16}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, OrNone<PlacedStandby>>>> Standby = new(
        "standby", () => Units("standby supply", UnitFields.Standby, "ups-1"), "Standby supplies; 'none' behind a name takes one away.", "{ups-1: {model: holm, in: A, unit: 1}}");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, OrNone<Fitting>>>> Fittings = new(
        "fittings", Units("fitting", FittingFields.Shape, "panel-1"), "Panels, cable managers, shelves and outlets that are bought; 'none' behind a name takes one away.", "{panel-1: {kind: panel, in: A, unit: 11, height: 1 U, places: 24}}");
    private static readonly Field<OrNone<IReadOnlyList<Uplink>>> Uplinks = new(
        "uplinks",
        Removable.Of<IReadOnlyList<Uplink>>(new ListShape<Uplink>("uplink", UplinkFields.Shape) { IsQuiet = true }),
        "Links between switches and to the line; 'none' takes away what was taken over.",
        "[{from: sw-1/25, to: line, media: copper}]");

    private static readonly Field<IReadOnlyList<Entry<IReadOnlyList<string>, OrNone<IReadOnlyList<PortRef>>>>> Patching = new(
        "patch",
        new MapShape<IReadOnlyList<string>, OrNone<IReadOnlyList<PortRef>>>(
            "patch", new NamesShape("a drop or endpoint"), Removable.Of<IReadOnlyList<PortRef>>(new PortShape { Many = true })) { KeyExample = "K-01", ThingExample = "sw-1/1" },
        "Which drop, or endpoint without a drop, is on which port; 'none' takes a cord away.",
        "{K-01..K-12: sw-1/1..12, K-17: inj-1, K-20: none}");

    private static readonly Field<BuildingChange> Building = new(
        "building", () => BuildingFields.Shape, "What of the building it changes: another cable, a vent, a wider conduit.", "{drops: {K-17: {cable: cat6-23}}}");

    /// <summary>The designs by name.</summary>
    public static MapShape<string, Design> Map { get; } = new(
        "design",
        Shapes.Name("a design"),
        new ObjectShape<Design>("design", [Like, Switches, Injectors, Midspans, Standby, Fittings, Uplinks, Patching, Building], Build)
        {
            About = "One answer to the job. A job holds several side by side.",
        })
    {
        KeyExample = "as-quoted",
    };

    private static MapShape<IReadOnlyList<string>, OrNone<T>> Units<T>(string noun, Shape<T> shape, string example)
        where T : class => Named.Map(noun, Removable.Of(shape), example);

    private static Design Build(Values values)
    {
        var removed = new List<string>();
        var switches = Placed(values.List(Switches), removed, values.Reader, (one, name, at) => one with { Id = name, At = at });
        var injectors = Placed([.. values.List(Injectors), .. values.List(Midspans)], removed, values.Reader, (one, name, at) => one with { Id = name, At = at });
        var standby = Placed(values.List(Standby), removed, values.Reader, (one, name, at) => one with { Id = name, At = at });
        var fittings = Placed(values.List(Fittings), removed, values.Reader, (one, name, at) => one with { Id = name, At = at });
        var uplinks = values.Get(Uplinks);
        if (uplinks is { Thing: null })
            removed.Add("uplinks");
        var patch = PatchRows.Read(values.List(Patching), removed, values.Reader);
        return new Design("", values.Get(Like), switches, injectors, standby, uplinks?.Thing, patch, removed, values.At) { Fittings = fittings, Building = values.Get(Building) };
    }

    private static List<T> Placed<T>(
        IReadOnlyList<Entry<IReadOnlyList<string>, OrNone<T>>> entries, List<string> removed, FieldReader reader, Func<T, string, Place, T> named)
        where T : class
    {
        var each = Named.Each(entries, (one, name, at) => one.Thing is { } thing ? new OrNone<T>(named(thing, name, at)) : new OrNone<T>((T?)null) { Removed = name }, reader);
        removed.AddRange(each.Select(one => one.Removed).OfType<string>());
        return [.. each.Select(one => one.Thing).OfType<T>()];
    }
}
