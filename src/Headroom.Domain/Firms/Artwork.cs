namespace Headroom.Domain.Firms;

/// <summary>A picture: either points (PNG) or shapes.</summary>
/// <param name="Width">Its width, in a unit of its own; only its share of the height counts.</param>
/// <param name="Height">Its height, in the same unit.</param>
public sealed record Artwork(double Width, double Height)
{
    /// <summary>The bytes of a PNG; empty for shapes.</summary>
    public ReadOnlyMemory<byte> Png { get; init; }

    /// <summary>Shapes, the lowest first; empty for points.</summary>
    public IReadOnlyList<ArtShape> Shapes { get; init; } = [];
}
