namespace Headroom.Planning.Packing;

/// <summary>Links of a box on one group of its ports.</summary>
/// <param name="Group">The group.</param>
/// <param name="Inner">Links to others in the same place.</param>
/// <param name="Outer">Links to the line.</param>
/// <param name="Backbone">Links to other places.</param>
public sealed record PackedLinks(int Group, int Inner, int Outer, int Backbone);
