namespace Headroom.Planning.Packing;

/// <summary>How hard to look. Bounded by work and with one worker the answer is the same each time; stopped from outside it may differ.</summary>
/// <param name="Work">The solver's work, in its own unit, which is about a second of a quick machine.</param>
public sealed record PackEffort(double Work)
{
    /// <summary>Stops it early with the best so far.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>Told each time something better is known: best cost and bound; null to tell nobody.</summary>
    public Action<long, long>? Told { get; init; }

    /// <summary>Enough for an office.</summary>
    public static PackEffort Usual { get; } = new(20);
}
