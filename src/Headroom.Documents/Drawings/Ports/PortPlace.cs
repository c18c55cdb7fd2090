using Headroom.Documents.Canvas;

namespace Headroom.Documents.Drawings.Ports;

/// <summary>Where a port lies on the face of its switch.</summary>
/// <param name="Number">The number printed on it.</param>
/// <param name="On">What is on it, or where it leads to; empty for nothing.</param>
/// <param name="Box">Where, on the drawing.</param>
public sealed record PortPlace(int Number, string On, Box Box);
