using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Cabling;

/// <summary>What was read of the pairs of one drop; of several readings of one pair the last written counts.</summary>
public sealed class PairReadings
{
    private static readonly string[] Order = ["1-2", "3-6", "4-5", "7-8"];

    private readonly Dictionary<string, Reading> _loops = [];
    private readonly Dictionary<string, Reading> _unbalances = [];

    /// <summary>The pairs of which the ohms out and back were read, in the order of the plug.</summary>
    public IEnumerable<string> Pairs => Order.Where(_loops.ContainsKey);

    /// <summary>The pairs of which the difference of the two conductors was read.</summary>
    public IEnumerable<string> UnbalancedPairs => Order.Where(_unbalances.ContainsKey);

    /// <summary>The reading of a pair out and back [Ω]; null when there is none.</summary>
    /// <param name="pair">The pair, as on the plug.</param>
    /// <returns>The reading.</returns>
    public Reading? Loop(string pair) => _loops.GetValueOrDefault(pair);

    /// <summary>The reading of the difference within a pair [Ω]; null when there is none.</summary>
    /// <param name="pair">The pair, as on the plug.</param>
    /// <returns>The reading.</returns>
    public Reading? Difference(string pair) => _unbalances.GetValueOrDefault(pair);

    /// <summary>The readings by drop, of those quantities that are read at pairs.</summary>
    /// <param name="readings">All readings of a job.</param>
    /// <returns>One set for each place.</returns>
    internal static Dictionary<string, PairReadings> ByDrop(IReadOnlyList<Reading> readings)
    {
        var byDrop = new Dictionary<string, PairReadings>();
        foreach (var reading in readings)
        {
            if (reading.What is not ("ohms" or "unbalance") || reading.Pair is not { } pair)
                continue;
            if (!byDrop.TryGetValue(reading.Where, out var its))
                byDrop[reading.Where] = its = new PairReadings();
            (reading.What == "ohms" ? its._loops : its._unbalances)[pair] = reading;
        }

        return byDrop;
    }
}
