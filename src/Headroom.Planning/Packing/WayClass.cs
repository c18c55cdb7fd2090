namespace Headroom.Planning.Packing;

/// <summary>A kind served by a family the same way, with or without something between, on whichever of its ports and however it is set.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="IsVia">True when something goes between.</param>
/// <param name="Cost">The least it costs beyond the box.</param>
/// <param name="Loads">The least it takes of each limit.</param>
/// <param name="Groups">The groups of ports on which it can be served.</param>
internal sealed record WayClass(int Kind, bool IsVia, long Cost, long[] Loads, HashSet<int> Groups);
