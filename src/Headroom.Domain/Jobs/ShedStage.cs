using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>One stage in which ports are switched off to spare a battery.</summary>
/// <param name="Priority">The priority whose ports are switched off.</param>
/// <param name="After">How long after the mains failed [s].</param>
public sealed record ShedStage(Priority Priority, Given<Seconds> After);
