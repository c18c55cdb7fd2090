using Headroom.Documents.Canvas;

namespace Headroom.Documents.Layout;

/// <summary>A column of a table.</summary>
/// <param name="Title">What stands at its head.</param>
/// <param name="Anchor">To which side its cells stand; figures stand to the end.</param>
public sealed record Column(string Title, Anchor Anchor = Anchor.Start)
{
    /// <summary>The least width [pt], for a column that is filled by hand or drawn in; null for what its cells need.</summary>
    public double? Least { get; init; }

    /// <summary>True when it takes the room that is left over.</summary>
    public bool Grows { get; init; }
}
