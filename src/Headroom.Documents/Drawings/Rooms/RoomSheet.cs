using Headroom.Documents.Canvas;

namespace Headroom.Documents.Drawings.Rooms;

/// <summary>The plan of a room by itself.</summary>
/// <param name="Picture">The drawing.</param>
/// <param name="Notes">What is said about it, in sentences.</param>
/// <param name="Inside">The room between its walls, on the drawing; its corner is below left.</param>
/// <param name="PointsPerMetre">The scale [pt/m].</param>
public sealed record RoomSheet(Picture Picture, IReadOnlyList<string> Notes, Box Inside, double PointsPerMetre);
