namespace Headroom.Planning.Jobs;

/// <summary>What the study says of a kind of endpoint on a group of ports.</summary>
/// <param name="Loads">What one takes of the budget in each state, in millionths of a watt; null when it is not served there.</param>
/// <param name="Limit">The least port limit that serves it [W]; null when none is set.</param>
/// <param name="Entry">The entry that is not kept; null when all are.</param>
internal sealed record PortAnswer(long[]? Loads, double? Limit, string? Entry)
{
    /// <summary>Watts to the whole numbers of the packing: fine enough that a sum of them judges as the study does.</summary>
    public const double PerWatt = 1e6;

    /// <summary>Something that takes no watts.</summary>
    public static PortAnswer Plain(int rows) => new(new long[rows], null, null);
}
