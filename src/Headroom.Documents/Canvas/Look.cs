namespace Headroom.Documents.Canvas;

/// <summary>How a figure is drawn.</summary>
/// <param name="Stroke">Its outline; null for none.</param>
/// <param name="Fill">What it is filled with; null to leave it open.</param>
public sealed record Look(Stroke? Stroke, Ink? Fill = null)
{
    /// <summary>An outline.</summary>
    public static Look Outline { get; } = new(Stroke.Thin);

    /// <summary>Filled without an outline.</summary>
    /// <param name="ink">The ink.</param>
    public static Look Solid(Ink ink) => new(null, ink);
}
