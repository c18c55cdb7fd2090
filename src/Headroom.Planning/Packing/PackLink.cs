namespace Headroom.Planning.Packing;

/// <summary>What it costs to put a link on a port of a group, in the smallest coin.</summary>
/// <param name="Group">The group of ports, by its number from 0.</param>
/// <param name="Inner">To another box in the same place; null when it cannot.</param>
/// <param name="Outer">To the line; null when it cannot.</param>
/// <param name="Backbone">To another place; null when it cannot.</param>
public sealed record PackLink(int Group, long? Inner, long? Outer, long? Backbone)
{
    /// <summary>To other places by the place it stands in, where it differs; null where it is the same in all.</summary>
    public IReadOnlyList<long?>? BackboneAt { get; init; }

    /// <summary>What it costs to link to another place from a place; null when it cannot.</summary>
    public long? BackboneFrom(int place) => BackboneAt is { } at ? at[place] : Backbone;
}
