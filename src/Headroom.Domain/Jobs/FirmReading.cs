using Headroom.Domain.Findings;

namespace Headroom.Domain.Jobs;

/// <summary>Watts at a port that the firm read at some site, this one or another.</summary>
/// <param name="Site">The site.</param>
/// <param name="Model">The model of the device, as the catalogue calls it.</param>
/// <param name="Mode">The mode it was in: <c>typical</c>, <c>peak</c>, <c>night</c>, <c>frost</c> or <c>start</c>.</param>
/// <param name="Watts">What the port gave [W]; above 0.</param>
/// <param name="At">Where it stands.</param>
public sealed record FirmReading(string Site, string Model, string Mode, double Watts, Place At);
