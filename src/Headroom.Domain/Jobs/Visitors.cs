using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>Devices that come and go, and ask for an address each time.</summary>
/// <param name="PerHour">How many come in an hour.</param>
/// <param name="Stay">How long each stays [s].</param>
/// <param name="Lease">For how long an address is lent [s].</param>
public sealed record Visitors(int PerHour, Given<Seconds> Stay, Given<Seconds> Lease);
