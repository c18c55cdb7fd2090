namespace Headroom.Documents.Canvas;

/// <summary>How a line is drawn.</summary>
/// <param name="Ink">Its ink.</param>
/// <param name="Width">Its width [pt].</param>
/// <param name="Dash">Length of dashes and gaps [pt]; null for a whole line.</param>
public sealed record Stroke(Ink Ink, double Width, double? Dash = null)
{
    /// <summary>What divides.</summary>
    public static Stroke Hairline { get; } = new(Ink.Rule, 0.5);

    /// <summary>What outlines.</summary>
    public static Stroke Thin { get; } = new(Ink.Ink, 0.6);

    /// <summary>What must be seen first.</summary>
    public static Stroke Heavy { get; } = new(Ink.Ink, 1.6);
}
