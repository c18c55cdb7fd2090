namespace Headroom.Planning;

/// <summary>What must be so, whatever it costs.</summary>
public sealed record PlanPins
{
    /// <summary>Nothing is pinned.</summary>
    public static PlanPins None { get; } = new();

    /// <summary>Switches of today's design that stay, by id.</summary>
    public IReadOnlyList<string> Keep { get; init; } = [];

    /// <summary>Spaces where nothing may stand.</summary>
    public IReadOnlyList<string> NotIn { get; init; } = [];

    /// <summary>The only switch models that may be used; empty for all.</summary>
    public IReadOnlyList<string> Models { get; init; } = [];

    /// <summary>True when no switch may have a fan.</summary>
    public bool Fanless { get; init; }

    /// <summary>Models that the client has already, and how many: they cost nothing.</summary>
    public IReadOnlyDictionary<string, int> Owned { get; init; } = new Dictionary<string, int>();

    /// <summary>True when cords need not stay where they are: without it each keeps the port it has today, where a switch of the same model stands in the same place and the plan allows it.</summary>
    public bool MoveCords { get; init; }

    /// <summary>True when the growth that the policy asks for is left out.</summary>
    public bool WithoutGrowth { get; init; }
}
