using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>How long a battery or standby supply holds a constant load.</summary>
/// <param name="Load">The load [W].</param>
/// <param name="Lasts">How long [s].</param>
public sealed record RuntimePoint(Given<Watts> Load, Given<Seconds> Lasts);
