using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>An injector (one port) or midspan (several).</summary>
/// <param name="Body">Size, weight, ratings, price.</param>
/// <param name="Ports">How many powered ports; 1 or more.</param>
/// <param name="Poe">The type of port power (IEEE 802.3); null when it is passive.</param>
/// <param name="Passive">The passive output; null when it is of a type.</param>
/// <param name="Speed">The highest data rate it passes on [bit/s]; null when not known.</param>
/// <param name="Supply">Its supply: watts for all ports together, voltage, efficiency.</param>
public sealed record InjectorModel(
    Body Body,
    int Ports,
    PoeType? Poe,
    PassiveOutput? Passive,
    Given<BitsPerSecond>? Speed,
    SupplyModel Supply)
{
    /// <summary>The invented name.</summary>
    public string Id => Body.Id;
}
