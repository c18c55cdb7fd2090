using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What stands between the job and the line.</summary>
/// <param name="Boxes">The boxes on the way, by the names people say, such as router and line-box; empty when not written.</param>
/// <param name="Boot">How long they take from the mains coming back until the line is there [s]; null when not known.</param>
public sealed record LineBoxes(IReadOnlyList<string> Boxes, Given<Seconds>? Boot)
{
    /// <summary>Nobody has written anything.</summary>
    public static LineBoxes None { get; } = new([], null);
}
