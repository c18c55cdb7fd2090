namespace Headroom.Planning.Packing;

/// <summary>A box that can be bought and put into a place.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Cost">What one costs, in the smallest coin; 0 or more.</param>
/// <param name="Groups">How many ports each of its groups has.</param>
/// <param name="Serves">What it can serve, and where.</param>
/// <param name="Limits">What it has of each limit, in whole parts; boxes that share a limit have it at the same position.</param>
public sealed record PackBox(string Id, long Cost, IReadOnlyList<int> Groups, IReadOnlyList<PackServe> Serves, IReadOnlyList<long> Limits)
{
    /// <summary>What is bought: boxes that differ only in how they are set have the same; by itself the id.</summary>
    public string Family { get; init; } = Id;

    /// <summary>The most of its family that there may be in all; null for any number.</summary>
    public int? Most { get; init; }

    /// <summary>The places where it may stand; null for all.</summary>
    public IReadOnlyList<int>? Places { get; init; }

    /// <summary>Where links can leave it; only used where a problem links its boxes.</summary>
    public IReadOnlyList<PackLink> Links { get; init; } = [];

    /// <summary>The sound power of it that reaches each listener, by place and listener, in parts that add up; empty when nothing is heard of it.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Heard { get; init; } = [];

    /// <summary>How many plugs it takes of an extra of its place: one, and one for each thing that stands beside it.</summary>
    public int Plugs { get; init; } = 1;

    /// <summary>What it takes of an extra of its place, such as the watts a standby supply must hold at least.</summary>
    public long Draw { get; init; }
}
