using Headroom.Documents.Canvas;

namespace Headroom.Documents.Drawings.Racks;

/// <summary>The front of a rack on its drawing.</summary>
/// <param name="Front">The whole front; unit 1 is lowest.</param>
/// <param name="Unit">How high one unit is [pt].</param>
/// <param name="Things">What is on the rails, from the bottom.</param>
public sealed record RackRails(Box Front, double Unit, IReadOnlyList<RackRail> Things);
