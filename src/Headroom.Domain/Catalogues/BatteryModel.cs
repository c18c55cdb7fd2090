using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>A battery block.</summary>
/// <param name="Body">Size, weight, price.</param>
/// <param name="Chemistry">lead (sealed) or lithium (iron phosphate).</param>
/// <param name="Nominal">Nominal voltage [V].</param>
/// <param name="Capacity">Nominal capacity [Ah]; null when not known.</param>
/// <param name="Discharge">Constant-power table at 25 °C, from the shortest: load for one block and duration.</param>
/// <param name="Life">Design life at 20 to 25 °C [s]; null when not known.</param>
public sealed record BatteryModel(
    Body Body,
    string Chemistry,
    Given<Volts> Nominal,
    Given<AmpereHours>? Capacity,
    IReadOnlyList<RuntimePoint> Discharge,
    Given<Seconds>? Life)
{
    /// <summary>The invented name.</summary>
    public string Id => Body.Id;
}
