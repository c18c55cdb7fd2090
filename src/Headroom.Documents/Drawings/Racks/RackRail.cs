using Headroom.Documents.Canvas;

namespace Headroom.Documents.Drawings.Racks;

/// <summary>Something on the rails of a rack, on its drawing.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Lowest">The lowest unit it fills, from 1 at the bottom.</param>
/// <param name="Box">Where it lies on the drawing.</param>
/// <param name="IsProposed">True when nobody wrote a place and one that fits was looked for.</param>
public sealed record RackRail(string Id, int Lowest, Box Box, bool IsProposed);
