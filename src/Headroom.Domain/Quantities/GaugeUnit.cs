namespace Headroom.Domain.Quantities;

/// <summary>American wire gauge: a higher number is a thinner wire, so that it is no factor of any area.</summary>
/// <remarks>Source: ASTM B258, diameter = 0.127 mm x 92^((36 - n) / 39), from memory.</remarks>
public sealed record GaugeUnit() : Unit("AWG", 1, 0, "awg", "gauge")
{
    private const double SmallestMillimetres = 0.127;
    private const double Ratio = 92;

    /// <inheritdoc/>
    public override double ToBase(double written)
    {
        var diameter = SmallestMillimetres * Math.Pow(Ratio, (36 - written) / 39);
        return Math.PI / 4 * diameter * diameter;
    }

    /// <inheritdoc/>
    public override double FromBase(double value)
    {
        var diameter = Math.Sqrt(4 * value / Math.PI);
        return 36 - 39 * Math.Log(diameter / SmallestMillimetres) / Math.Log(Ratio);
    }
}
