namespace Headroom.Documents.Canvas;

/// <summary>How a text is written.</summary>
/// <param name="Face">Its letters.</param>
/// <param name="Size">Their size [pt].</param>
/// <param name="Ink">Their ink.</param>
public sealed record Lettering(Face Face, double Size, Ink Ink = Ink.Ink)
{
    /// <summary>Running text of a paper.</summary>
    public static Lettering Body { get; } = new(Face.Plain, 9.5);

    /// <summary>The cells of a table.</summary>
    public static Lettering Cell { get; } = new(Face.Plain, 8.5);

    /// <summary>A label beside or above something.</summary>
    public static Lettering Label { get; } = new(Face.Plain, 7.5, Ink.Soft);

    /// <summary>Which end stands at the place.</summary>
    public Anchor Anchor { get; init; } = Anchor.Start;

    /// <summary>How far it is turned about its place, clockwise [°].</summary>
    public double Turned { get; init; }

    /// <summary>From one baseline to the next [pt].</summary>
    public double Lead => Size * 1.35;
}
