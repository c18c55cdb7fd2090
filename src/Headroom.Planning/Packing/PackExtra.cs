namespace Headroom.Planning.Packing;

/// <summary>Something of which a place that is used needs one, such as a standby supply.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Place">The place, by its number from 0.</param>
/// <param name="Cost">What it costs, in the smallest coin.</param>
/// <param name="Holds">The most that boxes may draw of it.</param>
public sealed record PackExtra(string Id, int Place, long Cost, long Holds)
{
    /// <summary>How many boxes, and things that go between, may hang on it; null for any number.</summary>
    public int? Plugs { get; init; }
}
