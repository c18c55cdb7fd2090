namespace Headroom.Documents.Canvas;

/// <summary>A rectangle on a sheet.</summary>
/// <param name="X">Its left edge [pt].</param>
/// <param name="Y">Its upper edge [pt].</param>
/// <param name="Width">How wide it is [pt].</param>
/// <param name="Height">How high it is [pt].</param>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    // Sums of widths of many columns differ in the last digits.
    private const double Dust = 0.01;

    /// <summary>Its right edge [pt].</summary>
    public double Right => X + Width;

    /// <summary>Its lower edge [pt].</summary>
    public double Bottom => Y + Height;

    /// <summary>Its middle.</summary>
    public Spot Middle => new(X + Width / 2, Y + Height / 2);

    /// <summary>The box so much smaller on every side.</summary>
    /// <param name="by">How much on each side [pt]; below zero makes it larger.</param>
    public Box Inset(double by) => new(X + by, Y + by, Width - 2 * by, Height - 2 * by);

    /// <summary>True when another lies within it.</summary>
    /// <param name="other">The other.</param>
    public bool Holds(Box other) => other.X >= X - Dust && other.Y >= Y - Dust && other.Right <= Right + Dust && other.Bottom <= Bottom + Dust;

    /// <summary>True when the two share more than an edge.</summary>
    /// <param name="other">The other.</param>
    public bool Overlaps(Box other) => other.X < Right - Dust && X < other.Right - Dust && other.Y < Bottom - Dust && Y < other.Bottom - Dust;
}
