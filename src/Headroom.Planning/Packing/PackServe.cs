namespace Headroom.Planning.Packing;

/// <summary>That a box can serve a kind on one of its groups of ports.</summary>
/// <param name="Kind">The kind, by its number from 0.</param>
/// <param name="Group">The group of ports, by its number from 0.</param>
/// <param name="Loads">What one of the kind takes of each limit of the box, in the order of <see cref="PackBox.Limits"/>.</param>
public sealed record PackServe(int Kind, int Group, IReadOnlyList<long> Loads)
{
    /// <summary>What goes between, such as an injector; null when nothing does.</summary>
    public string? Via { get; init; }

    /// <summary>What each one served so costs beyond the box, in the smallest coin.</summary>
    public long Cost { get; init; }
}
