using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>Ports of one switch that are alike.</summary>
/// <param name="First">The number of the first.</param>
/// <param name="Last">The number of the last.</param>
/// <param name="Media">copper or pluggable.</param>
/// <param name="Speeds">The data rates it can run at [bit/s].</param>
/// <param name="Poe">The type of port power (IEEE 802.3); null when it gives none.</param>
/// <param name="Passive">The passive voltage it can be switched to; null when it has none.</param>
public sealed record PortGroup(
    int First,
    int Last,
    string Media,
    IReadOnlyList<Given<BitsPerSecond>> Speeds,
    PoeType? Poe,
    PassiveOutput? Passive);
