using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Panels, cable managers, shelves and strips of outlets in a rack.</summary>
internal static class FittingFields
{
    private static readonly Field<string> Kind = new("kind", Shapes.Words("panel", "manager", "shelf", "outlets", "blank", "other"), "What it is.", "panel") { IsRequired = true };
    private static readonly Field<Given<RackUnits>> Height = new("height", () => Sensible.Units, "Its height in the rack; left out where it takes none, as at the back.", "1 U");
    private static readonly Field<Given<Metres>> Depth = new("depth", () => Sensible.Part, "Its depth.", "110 mm");
    private static readonly Field<Given<Kilograms>> Weight = new("weight", () => Sensible.Mass, "Its mass.", "900 g");
    private static readonly Field<int> Places = new("places", new CountShape(1, 500), "How many ports, outlets or cords it has or takes.", "24");
    private static readonly Field<Given<Amperes>> Most = new("most", () => Sensible.Mains, "The current that a strip of outlets may carry.", "10 A");
    private static readonly Field<Given<Volts>> Volts = new("volts", () => Sensible.MainsVolts, "The mains voltage at it.", "230 V");
    private static readonly Field<Given<Money>> Price = new("price", new MoneyShape(), "What one costs the firm.", "24 EUR");

    /// <summary>A fitting.</summary>
    public static ObjectShape<Fitting> Shape { get; } = new(
        "fitting",
        [Kind, .. StandingFields.All, Height, Depth, Weight, Places, Most, Volts, Price],
        values => new Fitting(
            "", values.Must(Kind), StandingFields.Build(values), values.Get(Height), values.Get(Depth), values.Get(Weight), values.Maybe(Places), values.Get(Most), values.Get(Volts), values.At)
        {
            Price = values.Get(Price),
        })
    {
        About = "Something in a rack that takes no figures of power: a panel, a cable manager, a shelf, a strip of outlets.",
    };

    /// <summary>The fittings by name.</summary>
    public static MapShape<IReadOnlyList<string>, Fitting> Map { get; } = Named.Map("fitting", Shape, "panel-1");
}
