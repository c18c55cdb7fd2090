using Headroom.Documents.Canvas;

namespace Headroom.Desk.Shown;

/// <summary>Where a thing is taken hold of on a drawing.</summary>
/// <param name="Thing">The thing.</param>
/// <param name="Label">What it is and how it is moved, for those who do not see it.</param>
/// <param name="Box">Where it lies on the drawing.</param>
public sealed record MoveGrip(string Thing, string Label, Box Box)
{
    /// <summary>How it moves to the right; null when it does not.</summary>
    public MoveAxis? Across { get; init; }

    /// <summary>How it moves down; null when it does not.</summary>
    public MoveAxis? Down { get; init; }

    /// <summary>The field that takes the name of the place on which it is put; null for one that moves freely.</summary>
    public string? Onto { get; init; }

    /// <summary>True for a point, drawn as a ring; false for something that has a face of its own.</summary>
    public bool IsPoint { get; init; }

    /// <summary>True when the scale of the drawing changes with it, so that it is drawn anew only when it is let go.</summary>
    public bool IsEdge { get; init; }
}
