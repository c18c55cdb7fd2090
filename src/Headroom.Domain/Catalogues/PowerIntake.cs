using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>How an endpoint takes power over the cable.</summary>
/// <param name="Class">The class it asks for (IEEE 802.3), 0 to 8; null when it is passive only or not known.</param>
/// <param name="Dual">True when each pairset carries a load of its own (dual signature).</param>
/// <param name="Passive">The range of passive voltage it takes [V], written as a range; null when it takes none.</param>
/// <param name="LeastVolts">The least voltage at its connector while it runs [V]; null for the least of its class.</param>
/// <param name="MostVolts">The most voltage it stands [V]; null for the standard's 57 V of a classed device.</param>
/// <param name="Asks">What it asks for over LLDP [W at the device]; null when it does not negotiate.</param>
/// <param name="Autoclass">True when it takes part in Autoclass (IEEE 802.3 clause 145).</param>
/// <param name="WhenDemoted">What it does when granted a lower class: runs, stays dark; null when not known.</param>
/// <param name="InputCapacitance">What the port charges at the start [F]; null when not known.</param>
/// <param name="LeastDraw">What it draws when it does least [W]; null when not known.</param>
public sealed record PowerIntake(
    int? Class,
    bool Dual,
    Given<Volts>? Passive,
    Given<Volts>? LeastVolts,
    Given<Volts>? MostVolts,
    Given<Watts>? Asks,
    bool Autoclass,
    WhenDemoted? WhenDemoted,
    Given<Farads>? InputCapacitance,
    Given<Watts>? LeastDraw);
