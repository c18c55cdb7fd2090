namespace Headroom.Planning.Packing;

/// <summary>A box with what it serves.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Box">Which of the boxes of the problem it is, by number.</param>
/// <param name="Items">How many it serves by each of its ways, by the number of the way.</param>
/// <param name="Links">Links to others in its place and out of it, by group of ports.</param>
public sealed record PackedBox(int Place, int Box, IReadOnlyDictionary<int, int> Items, IReadOnlyList<PackedLinks> Links)
{
    /// <summary>True when the others of its place link to it.</summary>
    public bool IsHead { get; init; }
}
