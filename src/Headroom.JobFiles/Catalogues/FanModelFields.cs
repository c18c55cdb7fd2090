using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Small fans.</summary>
internal static class FanModelFields
{
    private static readonly Field<Given<Volts>> Rated = new("rated", () => Sensible.LowVolts, "Rated supply voltage.", "12 V") { IsRequired = true };
    private static readonly Field<Given<Volts>> Start = new("start", () => Sensible.LowVolts, "The voltage from which it starts by itself.", "5 V");
    private static readonly Field<Given<Amperes>> Current = new("current", () => Sensible.SmallCurrent, "Current at the rated voltage.", "90 mA");
    private static readonly Field<Given<RevolutionsPerMinute>> Speed = new("speed", () => Sensible.Speed, "Speed at the rated voltage.", "4900 rpm");

    private static readonly Field<IReadOnlyList<Entry<Given<CubicMetresPerHour>, Given<Pascals>>>> Curve = new(
        "curve", Points.Table(Sensible.Flow, Sensible.Pressure, ("6 m3/h", "24 Pa")), "Pressure by flow, from no flow to free air.", "{0 m3/h: 38 Pa, 6 m3/h: 24 Pa, 13 m3/h: 0 Pa}");

    private static readonly Field<Given<SoundPower>> Power = new("power", () => Sensible.Sound, "Sound power level at the rated voltage in free air.", "3.1 B");
    private static readonly Field<Given<Metres>> Holes = new("holes", () => Sensible.Part, "Distance of the fixing holes.", "32 mm");
    private static readonly Field<int> Wires = new("wires", new CountShape(2, 4), "How many wires its plug has.", "3");
    private static readonly Field<bool> Tachometer = new("tachometer", Shapes.Yes, "Whether it reports its speed.", "yes");

    /// <summary>A fan model.</summary>
    public static ObjectShape<FanModel> Shape { get; } = new(
        "fan model",
        [.. BodyFields.First, Rated, Start, Current, Speed, Curve, Power, Holes, Wires, Tachometer, .. BodyFields.Last],
        values => new FanModel(
            BodyFields.Build(values),
            values.Must(Rated),
            values.Get(Start),
            values.Get(Current),
            values.Get(Speed),
            CurveOf(values),
            values.Get(Power),
            values.Get(Holes),
            values.Maybe(Wires),
            values.Maybe(Tachometer)));

    private static IReadOnlyList<FanPoint> CurveOf(Values values)
    {
        using var step = values.Reader.Into("curve");
        var points = Points.InOrder(values.List(Curve), flow => flow.Value.Value, values.Reader);
        Points.CheckFalling(points, pressure => pressure.Value.Value, values.Reader, "less pressure for more flow");
        return [.. points.Select(point => new FanPoint(point.Key, point.Value))];
    }
}
