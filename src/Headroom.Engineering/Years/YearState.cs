using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Years;

/// <summary>The ledger at the end of a year, in numbers.</summary>
/// <param name="Year">The year from today; 0 for today.</param>
/// <param name="On">The day.</param>
/// <param name="Counts">How many entries have each verdict.</param>
/// <param name="Added">What was added since today.</param>
/// <param name="Turns">What became worse in the year, worst first.</param>
public sealed record YearState(int Year, DateOnly On, IReadOnlyDictionary<Verdict, int> Counts, IReadOnlyList<AddedDevices> Added, IReadOnlyList<Turn> Turns)
{
    /// <summary>How many entries have a verdict.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>The count.</returns>
    public int Count(Verdict verdict) => Counts.GetValueOrDefault(verdict);

    /// <summary>Devices with a supply of their own for which no port is free.</summary>
    public int WithoutPort => Added.Sum(added => added.WithoutPort);
}
