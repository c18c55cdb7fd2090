using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>A supply of a switch or midspan.</summary>
/// <param name="Id">The name of this supply within the model.</param>
/// <param name="PortWatts">What it leaves for all powered ports together [W]; null when not known or when there are none.</param>
/// <param name="PortVolts">The voltage at the ports [V]; null when not declared, then the least of the standard counts.</param>
/// <param name="Rated">Its rated output [W]; null when not known.</param>
/// <param name="Efficiency">Efficiency by share of the rated output; empty when not known.</param>
/// <param name="Input">ac or dc; null when not known.</param>
/// <param name="InputVolts">The range of input voltage [V], written as a range; null when not known.</param>
/// <param name="Price">What this supply adds to the price; null when not known.</param>
public sealed record SupplyModel(
    string Id,
    Given<Watts>? PortWatts,
    Given<Volts>? PortVolts,
    Given<Watts>? Rated,
    IReadOnlyList<EfficiencyPoint> Efficiency,
    string? Input,
    Given<Volts>? InputVolts,
    Given<Money>? Price)
{
    /// <summary>Real over apparent power at its input, 0 to 1; null when not known.</summary>
    public Given<Share>? PowerFactor { get; init; }

    /// <summary>How many supplies alike it is made of, each of which may fail by itself; 1 or more.</summary>
    public int Pieces { get; init; } = 1;

    /// <summary>What is left for all powered ports together when one of its pieces has failed [W]; null when not known or when it is one piece.</summary>
    public Given<Watts>? OneLost { get; init; }
}
