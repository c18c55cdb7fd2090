namespace Headroom.Planning.Packing;

/// <summary>What is to be packed into which boxes at the least cost.</summary>
/// <param name="Places">How many places there are; 1 or more.</param>
/// <param name="Kinds">What is to be served.</param>
/// <param name="Boxes">What can be bought.</param>
public sealed record PackProblem(int Places, IReadOnlyList<PackKind> Kinds, IReadOnlyList<PackBox> Boxes)
{
    /// <summary>The links that leave each place; empty where boxes are not linked.</summary>
    public IReadOnlyList<PlaceLinks> Links { get; init; } = [];

    /// <summary>True when boxes are linked.</summary>
    public bool Linked => Links.Count > 0;

    /// <summary>Extras of which a place that is used needs exactly one; none for a place without any.</summary>
    public IReadOnlyList<PackExtra> Extras { get; init; } = [];

    /// <summary>The sound power that each listener bears, in the parts of <see cref="PackBox.Heard"/>; infinite where nobody set a limit.</summary>
    public IReadOnlyList<double> Bears { get; init; } = [];

    /// <summary>Says whether a box may serve a kind in a place.</summary>
    internal bool CanServe(int place, PackBox box, int kind) =>
        (box.Places is null || box.Places.Contains(place)) && Kinds[kind].Places.Contains(place);
}
