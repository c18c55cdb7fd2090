namespace Headroom.Planning.Packing;

/// <summary>A place for one box in a model of single boxes.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Boxes">What it can be, by the numbers of the boxes.</param>
/// <param name="Must">True when something must stand there.</param>
/// <param name="Alike">Slots of the same number are exchangeable, and filled in order.</param>
internal sealed record PackSlot(int Place, IReadOnlyList<int> Boxes, bool Must, int Alike);
