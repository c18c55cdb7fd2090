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
        [StandbyModel, .. StandingFields.All, Batteries],
        values => new PlacedStandby("", values.Get(StandbyModel), StandingFields.Build(values), values.Get(Batteries), values.At));
}
