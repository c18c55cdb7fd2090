namespace Headroom.Desk.Shown;

/// <summary>How a place on a drawing becomes the number in a field: number = first + (place - origin) / scale, rounded.</summary>
/// <param name="Field">The field.</param>
/// <param name="Origin">The place of the first number on the drawing [pt].</param>
/// <param name="Scale">How far one more lies on the drawing [pt]; below zero where more is to the left or up.</param>
/// <param name="Step">How far a key moves it, in the unit of the field.</param>
/// <param name="Stride">How far it moves with the shift key held.</param>
public sealed record MoveAxis(string Field, double Origin, double Scale, double Step, double Stride)
{
    /// <summary>The number at the origin.</summary>
    public double First { get; init; }

    /// <summary>Digits behind the point that are kept.</summary>
    public int Digits { get; init; }
}
