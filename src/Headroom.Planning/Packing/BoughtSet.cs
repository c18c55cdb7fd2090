namespace Headroom.Planning.Packing;

/// <summary>What is bought, without saying what hangs where.</summary>
/// <param name="Boxes">How many of each family stand in each place, by place and number of the family; only those of which there is one.</param>
/// <param name="Extras">The extra of each place that has one, by the number of the extra.</param>
public sealed record BoughtSet(IReadOnlyDictionary<(int Place, int Family), int> Boxes, IReadOnlyList<int> Extras)
{
    /// <summary>How many boxes there are.</summary>
    public int Count => Boxes.Values.Sum();

    /// <summary>The set as a text of its own, the same for the same set.</summary>
    public string Key => string.Join(',', Boxes.OrderBy(at => at.Key).Select(at => $"{at.Key.Place}:{at.Key.Family}x{at.Value}")) + "|" + string.Join(',', Extras);
}
