namespace Headroom.Engineering.Standby;

/// <summary>One thing that must go on working in an outage, and what it needs on its way to the line.</summary>
/// <param name="Name">As the policy names it: <c>phone</c>.</param>
/// <param name="Ids">The endpoints or the switch it means.</param>
/// <param name="Needs">Everything on the way, each once.</param>
/// <param name="Missing">What of it is on no battery.</param>
/// <param name="Shed">Endpoints of it that are switched off to spare the battery, with the minutes.</param>
public sealed record KeptService(string Name, IReadOnlyList<string> Ids, IReadOnlyList<string> Needs, IReadOnlyList<string> Missing, IReadOnlyList<string> Shed)
{
    /// <summary>What is to be found out about the way; null when nothing.</summary>
    public string? Question { get; init; }

    /// <summary>When the last of those that come back works again, from the mains coming back [s]; null when not known or none comes back.</summary>
    public double? BackSeconds { get; init; }

    /// <summary>The last of them.</summary>
    public string? LastId { get; init; }

    /// <summary>Those that stay dark.</summary>
    public IReadOnlyList<string> Dark { get; init; } = [];

    /// <summary>What is to be found out before the time can be told; null when nothing.</summary>
    public string? BackQuestion { get; init; }

    /// <summary>What the time is made of: a word and the moment it ends [s].</summary>
    public IReadOnlyList<BackPart> Parts { get; init; } = [];
}
