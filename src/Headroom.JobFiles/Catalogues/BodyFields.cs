using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>What every model has: size, weight, what air it bears, what it costs.</summary>
internal static class BodyFields
{
    // From a module to a cabinet of two metres.
    private static readonly Bounds Side = new(0.002, 3);

    private static readonly Field<string> Like = new("like", Shapes.Name("a model of the same kind"), "The model it takes everything over from that is not written here.", "alder");
    private static readonly Field<string> About = new("about", Shapes.Text, "What it is, in one line.", "Eight ports for a desk");

    private static readonly Field<IReadOnlyList<Given<Metres>>> Size = new(
        "size", new BoxShape<IReadOnlyList<Given<Metres>>>("width x depth x height", Side, SameOrigin) { Unit = "mm" }, "Width, depth without plugs, and height.", "440 x 257 x 44 mm");

    private static readonly Field<Given<RackUnits>> Units = new("units", () => Sensible.Units, "Its height in a rack; left out where it does not go into one.", "1 U");
    private static readonly Field<string> Ears = new("ears", Shapes.Words("fixed", "loose", "none"), "Whether it has ears for a rack: fixed, loose in the box, or none.", "fixed");
    private static readonly Field<Given<Metres>> Feet = new("feet", () => Sensible.Gap, "Height of its feet, which keep a gap free below it; 0 mm for none.", "4 mm");
    private static readonly Field<Given<Kilograms>> Weight = new("weight", () => Sensible.Mass, "Its mass.", "3.1 kg");
    private static readonly Field<Given<Celsius>> Ambient = new("ambient", () => Sensible.RatedAir, "The air it is rated for.", "0..45 °C declared");
    private static readonly Field<Given<Metres>> Altitude = new("altitude", () => Sensible.Altitude, "The greatest height above the sea it is rated for.", "3000 m");
    private static readonly Field<Given<Seconds>> BetweenFailures = new("mtbf", () => Sensible.BetweenFailures, "Mean time between failures, as its maker declares it.", "280000 h declared");
    private static readonly Field<Given<Seconds>> Warranty = new("warranty", () => Sensible.Years, "How long its maker or seller stands in for it.", "3 years declared");
    private static readonly Field<Given<Money>> Price = new("price", new MoneyShape(), "What one costs.", "212 EUR invented");
    private static readonly Field<Given<Money>> PricePerMetre = new("price per metre", new MoneyShape(), "What a metre of it costs.", "0.42 EUR invented");

    /// <summary>The keys in front of those of the kind.</summary>
    public static IReadOnlyList<Field> First { get; } = [Like, About];

    /// <summary>The keys of a thing that stands somewhere.</summary>
    public static IReadOnlyList<Field> Last { get; } = [Size, Units, Ears, Feet, Weight, Ambient, Altitude, BetweenFailures, Warranty, Price];

    /// <summary>The keys of a thing that is sold by the metre.</summary>
    public static IReadOnlyList<Field> ByMetre { get; } = [Weight, Price, PricePerMetre];

    /// <summary>The body as far as it is written.</summary>
    public static Body Build(Values values)
    {
        var size = values.Get(Size);
        var air = values.Get(Ambient);
        return new Body(
            "",
            values.Get(About),
            size?[0],
            size?[2],
            size?[1],
            values.Get(Units),
            values.Get(Ears),
            values.Get(Weight),
            air is null ? null : End(air, -1),
            air is null ? null : End(air, 1),
            values.Get(Altitude),
            values.Get(Price) ?? values.Get(PricePerMetre),
            values.At)
        {
            BetweenFailures = values.Get(BetweenFailures),
            Warranty = values.Get(Warranty),
            Feet = values.Get(Feet),
        };
    }

    private static Given<Celsius> End(Given<Celsius> range, int sign) =>
        range with { Value = new Celsius(range.Value.Value + sign * (range.PlusMinus ?? 0)), PlusMinus = null };

    // The word behind the last side is meant for all of them.
    private static IReadOnlyList<Given<Metres>> SameOrigin(IReadOnlyList<Given<Metres>> sides) =>
        [.. sides.Select(side => side with { Origin = sides[^1].Origin })];
}
