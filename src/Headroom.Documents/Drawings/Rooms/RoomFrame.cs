using Headroom.Documents.Drawings.Plates;
using Headroom.Domain.Quantities;
using Box = Headroom.Documents.Canvas.Box;
using SheetSpot = Headroom.Documents.Canvas.Spot;

namespace Headroom.Documents.Drawings.Rooms;

/// <summary>Where a room lies on its drawing: its corner is below left, as in a plan.</summary>
/// <param name="Size">The size of the room.</param>
/// <param name="Scale">The scale.</param>
/// <param name="Inside">The room between its walls.</param>
internal sealed record RoomFrame(Size Size, DrawingScale Scale, Box Inside)
{
    /// <summary>How thick walls are drawn; nobody surveys that [pt].</summary>
    public const double Wall = 6;

    private const double Left = 34;
    private const double Top = 44;
    private static readonly Box Room = new(0, 0, 440, 400);

    /// <summary>Places a room at the largest scale that fits.</summary>
    public static RoomFrame Of(Size size, bool imperial = false)
    {
        var scale = DrawingScale.For(size.Length, size.Width, Room, imperial);
        return new RoomFrame(size, scale, new Box(Left, Top, scale.Points(size.Length), scale.Points(size.Width)));
    }

    /// <summary>Where something in the room lies on the drawing.</summary>
    public SheetSpot At(Spot spot) => At(spot.X, spot.Y);

    /// <summary>Where a place lies on the drawing.</summary>
    public SheetSpot At(double x, double y) => new(Inside.X + Scale.Points(x), Inside.Bottom - Scale.Points(y));
}
