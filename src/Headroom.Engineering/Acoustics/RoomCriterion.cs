namespace Headroom.Engineering.Acoustics;

/// <summary>What is recommended for the background in a kind of room.</summary>
/// <param name="Kind">The kind of room.</param>
/// <param name="Least">The lower end of the range [dB(A)]; null where only an upper end is given.</param>
/// <param name="Most">The upper end [dB(A)].</param>
/// <param name="Source">Where it comes from.</param>
public sealed record RoomCriterion(string Kind, double? Least, double Most, string Source);
