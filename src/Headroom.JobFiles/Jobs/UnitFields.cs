using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>The injectors and standby supplies of a design.</summary>
internal static class UnitFields
{
    private static readonly Field<string> InjectorModel = new("model", Shapes.Name("an injector model"), "The model in the catalogue.", "inlet");

    private static readonly Field<IReadOnlyList<PortRef>> From = new(
        "from", new PortShape { Many = true }, "The switch ports that its data side comes from, in the order of its own ports.", "sw-1/9..16");

    private static readonly Field<string> StandbyModel = new("model", Shapes.Name("a standby supply model"), "The model in the catalogue.", "holm");
    private static readonly Field<Given<Seconds>> Batteries = new("batteries", () => Sensible.Years, "How old its batteries are.", "3 years");

    private static readonly Field<Given<Seconds>> Runtime = new("runtime", () => Sensible.Lasts, "How long it must hold; without it the policy's runtime counts.", "20 min");

    private static readonly Field<IReadOnlyList<Entry<string, Given<Watts>>>> Also = new(
        "also",
        () => new MapShape<string, Given<Watts>>("", Shapes.Name("what hangs on it"), Sensible.SupplyWatts) { KeyExample = "router", ThingExample = "11 W" },
        "What else hangs on it, such as router and line box, with what each draws.",
        "{router: 11 W, line-box: 6 W}");

    private static readonly Field<IReadOnlyList<Entry<Enum, Given<Seconds>>>> Sheds = new(
        "sheds",
        () => new MapShape<Enum, Given<Seconds>>("", new WordShape<Enum>(("low", Priority.Low), ("high", Priority.High)), Sensible.Moment) { KeyExample = "low", ThingExample = "5 min" },
        "After what time the ports of a priority are switched off to spare it.",
        "{low: 5 min, high: 25 min}");

    /// <summary>An injector or midspan.</summary>
    public static ObjectShape<PlacedInjector> Injector { get; } = new(
        "injector",
        [InjectorModel, .. StandingFields.All, StandingFields.FedBy, From],
        values => new PlacedInjector("", values.Get(InjectorModel), StandingFields.Build(values), values.Get(StandingFields.FedBy), values.List(From), values.At))
    {
        About = "An injector or midspan adds watts to a data cable.",
    };

    /// <summary>A standby supply.</summary>
    public static ObjectShape<PlacedStandby> Standby { get; } = new(
        "standby supply",
        [StandbyModel, .. StandingFields.All, Batteries, Runtime, Also, Sheds],
        values => new PlacedStandby("", values.Get(StandbyModel), StandingFields.Build(values), values.Get(Batteries), values.At)
        {
            Wanted = values.Get(Runtime),
            Also = values.Get(Also) is { } also ? [.. also.Select(entry => new AlsoFed(entry.Key, entry.Value))] : null,
            Sheds = values.Get(Sheds) is { } sheds ? [.. sheds.Select(entry => new ShedStage((Priority)entry.Key, entry.Value)).OrderBy(stage => stage.After.Value.Value)] : null,
        });
}
