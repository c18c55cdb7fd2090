namespace Headroom.Planning.Packing;

/// <summary>Things alike that are to be served: they are counted, so that the size of a problem grows with kinds and not with heads.</summary>
/// <param name="Id">The name people say.</param>
/// <param name="Count">How many there are; 0 or more.</param>
/// <param name="Places">The places from which they can be reached, by number from 0.</param>
public sealed record PackKind(string Id, int Count, IReadOnlyList<int> Places);
