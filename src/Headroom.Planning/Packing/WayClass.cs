namespace Headroom.Planning.Packing;

/// <summary>A kind served the same way (with or without something between), wherever that is possible.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Cost">The least it costs beyond the box.</param>
/// <param name="Loads">The least it takes of each limit, wherever it is served.</param>
/// <param name="IsVia">True when something goes between.</param>
/// <param name="Ports">The groups of ports on which it can be served, by their number among all groups of all families.</param>
internal sealed record WayClass(int Kind, long Cost, long[] Loads, bool IsVia, HashSet<int> Ports);
