using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Cabinets, open frames and shelves.</summary>
internal static class CabinetModelFields
{
    private static readonly Field<string> Kind = new("kind", Shapes.Words("cabinet", "frame", "shelf"), "What it is.", "cabinet") { IsRequired = true };
    private static readonly Field<Given<RackUnits>> Inside = new("inside", () => Sensible.Units, "Rack units inside, or that a shelf takes.", "12 U");
    private static readonly Field<Given<Metres>> UsableDepth = new("usable depth", () => Sensible.Part, "Depth from the front rail to what is behind.", "440 mm");
    private static readonly Field<Given<Kilograms>> Load = new("load", () => Sensible.Mass, "The most it may carry.", "60 kg");
    private static readonly Field<Given<SquareMetres>> VentArea = new("vent area", () => Sensible.Opening, "Free area of its vents.", "180 cm2");
    private static readonly Field<Given<Decibels>> InsertionLoss = new("insertion loss", () => Sensible.Loss, "How much quieter things are inside it.", "6 dB");

    /// <summary>A cabinet model.</summary>
    public static ObjectShape<CabinetModel> Shape { get; } = new(
        "cabinet model",
        [.. BodyFields.First, Kind, Inside, UsableDepth, Load, VentArea, InsertionLoss, .. BodyFields.Last],
        values => new CabinetModel(
            BodyFields.Build(values),
            values.Must(Kind),
            values.Get(Inside),
            values.Get(UsableDepth),
            values.Get(Load),
            values.Get(VentArea),
            values.Get(InsertionLoss)));
}
