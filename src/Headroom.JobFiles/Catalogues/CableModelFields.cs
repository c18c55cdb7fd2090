using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Copper and fibre cables.</summary>
internal static class CableModelFields
{
    private static readonly Field<string> Category = new("category", Shapes.Text, "The category of the cabling standard.", "6A");
    private static readonly Field<Given<SquareMillimetres>> Conductor = new("conductor", () => Sensible.Conductor, "One conductor, as a cross-section or a gauge.", "23 AWG");
    private static readonly Field<Given<Share>> Conductivity = new("conductivity", () => Sensible.Conductivity, "Conductivity as a share of annealed copper, where it is not copper.", "63 %");
    private static readonly Field<bool> CopperClad = new("copper-clad", Shapes.Yes, "Whether the conductors are aluminium or steel with a copper skin, which the cabling standards do not allow.", "no");
    private static readonly Field<bool> Screened = new("screened", Shapes.Yes, "Whether it has a screen.", "yes");
    private static readonly Field<bool> Stranded = new("stranded", Shapes.Yes, "Yes for a cord, no for solid conductors.", "no");
    private static readonly Field<Given<Metres>> Diameter = new("diameter", () => Sensible.Thickness, "Outer diameter.", "7.1 mm");
    private static readonly Field<Given<Celsius>> MostTemperature = new("most temperature", () => Sensible.Air, "The warmest it may become.", "60 °C");

    private static readonly Field<Given<Metres>> BendRadius = new("bend radius", () => Sensible.Gap, "The tightest it may be bent once it lies, where its maker says.", "28 mm");

    private static readonly Field<string> FibreCategory = new("category", Shapes.Words("OM1", "OM2", "OM3", "OM4", "OM5", "OS1a", "OS2"), "The category of the fibre.", "OM4") { IsRequired = true };
    private static readonly Field<int> Fibres = new("fibres", new CountShape(1, 288), "How many fibres.", "8");

    private static readonly Field<IReadOnlyList<Entry<Given<Nanometres>, Given<Decibels>>>> Loss = new(
        "loss", Points.Table(Sensible.Wavelength, Sensible.Loss, ("850 nm", "3.0 dB")), "Most loss of a kilometre, by wavelength.", "{850 nm: 3.0 dB, 1300 nm: 1.5 dB}");

    /// <summary>A copper cable model.</summary>
    public static ObjectShape<CableModel> Copper { get; } = new(
        "cable model",
        [.. BodyFields.First, Category, Conductor, Conductivity, CopperClad, Screened, Stranded, Diameter, MostTemperature, BendRadius, .. BodyFields.ByMetre],
        values => new CableModel(
            BodyFields.Build(values),
            values.Get(Category),
            values.Get(Conductor),
            values.Get(Conductivity),
            values.Maybe(CopperClad) ?? false,
            values.Maybe(Screened),
            values.Maybe(Stranded) ?? false,
            values.Get(Diameter),
            values.Get(MostTemperature))
        {
            BendRadius = values.Get(BendRadius),
        });

    /// <summary>A fibre cable model.</summary>
    public static ObjectShape<FibreModel> Fibre { get; } = new(
        "fibre model",
        [.. BodyFields.First, FibreCategory, Fibres, Loss, Diameter, .. BodyFields.ByMetre],
        values => new FibreModel(BodyFields.Build(values), values.Must(FibreCategory), values.Maybe(Fibres), LossOf(values))
        {
            Diameter = values.Get(Diameter),
        });

    private static Dictionary<int, Given<Decibels>> LossOf(Values values)
    {
        using var step = values.Reader.Into("loss");
        var byNanometre = Points.InOrder(values.List(Loss), length => Math.Round(length.Value.Value), values.Reader);
        return byNanometre.ToDictionary(entry => (int)Math.Round(entry.Key.Value.Value), entry => entry.Value);
    }
}
