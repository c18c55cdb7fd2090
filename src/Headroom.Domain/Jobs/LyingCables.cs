using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>Cables of one thickness that lie in a pathway already.</summary>
/// <param name="Count">How many; 1 or more.</param>
/// <param name="Diameter">Their outer diameter [m].</param>
public sealed record LyingCables(int Count, Given<Metres> Diameter);
