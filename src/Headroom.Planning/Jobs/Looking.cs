using Headroom.Domain.Plans;

namespace Headroom.Planning.Jobs;

/// <summary>A way of looking for designs, with what it has come to.</summary>
internal abstract class Looking
{
    /// <summary>What the study has nothing against, in the order found.</summary>
    public List<Candidate> Found { get; } = [];

    /// <summary>What lost, in the order found.</summary>
    public List<RefusedSet> Refused { get; } = [];

    /// <summary>No design that was not found costs less, in coins; null when all were found.</summary>
    public long? Bound { get; protected set; } = 0;

    /// <summary>True when boxes were given up though other cords in them might do: the bound then leaves them out.</summary>
    public bool GaveUp { get; protected set; }

    /// <summary>A link out of a place that the study found too slow whatever hangs where; null for none. Nothing was looked for beyond it.</summary>
    public (int Place, LinkKind Kind, double Bits)? TooSlow { get; protected set; }

    /// <summary>Only what costs less than this is looked for [coins]; null for anything.</summary>
    public long? Below { get; set; }

    /// <summary>What a design costs that is known already [coins]; null for none. Only those who look on are told of it.</summary>
    public long? Known { get; set; }

    /// <summary>Looks on until no set costs less than a limit, or enough were found or tried.</summary>
    /// <param name="limit">Says, by the cheapest found, up to which cost to look [coins].</param>
    /// <param name="most">The most designs to find.</param>
    /// <param name="tries">The most sets to try.</param>
    public abstract void Run(Func<long, long> limit, int most, int tries);
}
