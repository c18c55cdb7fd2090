namespace Headroom.Documents.Layout;

/// <summary>Room between two blocks.</summary>
/// <param name="Height">How much [pt].</param>
public sealed record Gap(double Height) : Block;
