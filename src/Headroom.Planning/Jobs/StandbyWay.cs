using Headroom.Domain.Catalogues;

namespace Headroom.Planning.Jobs;

/// <summary>A standby supply, and whether ports of low priority are switched off after a while to spare it.</summary>
/// <param name="Model">The model.</param>
/// <param name="Sheds">True when they are.</param>
internal sealed record StandbyWay(StandbyModel Model, bool Sheds);
