using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>A voltage that is put on the pins without asking what is plugged in.</summary>
/// <param name="Volts">The voltage [V].</param>
/// <param name="Amperes">The most it can give [A]; null when not known.</param>
/// <param name="Pairs">On how many pairs, 2 or 4; null when not known.</param>
/// <param name="AlwaysOn">True when it cannot be switched off.</param>
public sealed record PassiveOutput(Given<Volts> Volts, Given<Amperes>? Amperes, int? Pairs, bool AlwaysOn);
