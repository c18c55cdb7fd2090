using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>A small fan.</summary>
/// <param name="Body">Size, weight, price.</param>
/// <param name="Rated">Rated supply voltage [V].</param>
/// <param name="Start">The voltage from which it starts by itself [V]; null when not known.</param>
/// <param name="Draw">Current at the rated voltage [A]; null when not known.</param>
/// <param name="Speed">Speed at the rated voltage [1/min]; null when not known.</param>
/// <param name="Curve">Pressure over flow, from no flow to free air.</param>
/// <param name="Power">Sound power level at the rated voltage in free air [dB re 1 pW, A-weighted]; null when not known.</param>
/// <param name="Holes">Distance of the fixing holes [m]; null when not known.</param>
/// <param name="Wires">How many wires its plug has; null when not known.</param>
/// <param name="Tachometer">True when it reports its speed; null when not known.</param>
public sealed record FanModel(
    Body Body,
    Given<Volts> Rated,
    Given<Volts>? Start,
    Given<Amperes>? Draw,
    Given<RevolutionsPerMinute>? Speed,
    IReadOnlyList<FanPoint> Curve,
    Given<SoundPower>? Power,
    Given<Metres>? Holes,
    int? Wires,
    bool? Tachometer)
{
    /// <summary>The invented name.</summary>
    public string Id => Body.Id;
}
