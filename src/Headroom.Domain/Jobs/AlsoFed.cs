using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>Something outside the job that hangs on a standby supply, such as the router or the box of the line.</summary>
/// <param name="Name">The name people say.</param>
/// <param name="Watts">What it draws from its feed [W].</param>
public sealed record AlsoFed(string Name, Given<Watts> Watts);
