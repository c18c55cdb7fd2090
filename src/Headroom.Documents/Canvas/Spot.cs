namespace Headroom.Documents.Canvas;

/// <summary>A place on a sheet, from its upper left corner.</summary>
/// <param name="X">To the right [pt].</param>
/// <param name="Y">Down [pt].</param>
public readonly record struct Spot(double X, double Y)
{
    /// <summary>The place so much further right and down.</summary>
    /// <param name="right">To the right [pt].</param>
    /// <param name="down">Down [pt].</param>
    public Spot By(double right, double down) => new(X + right, Y + down);
}
