using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Years;

/// <summary>What becomes of a design over the years.</summary>
/// <param name="Job">The name of the job.</param>
/// <param name="Design">The design.</param>
/// <param name="Years">Today and the end of each year.</param>
/// <param name="FirstShort">What becomes short first, to the month; null when nothing does.</param>
/// <param name="FirstTight">What becomes tight first, to the month; null when nothing does.</param>
/// <param name="Dues">What is due within the years, in order; what has no day yet behind.</param>
/// <param name="Rates">What changes, and how fast.</param>
/// <param name="Assumed">What was assumed, in words.</param>
public sealed record YearsResult(
    string Job,
    string Design,
    IReadOnlyList<YearState> Years,
    Turn? FirstShort,
    Turn? FirstTight,
    IReadOnlyList<DueDate> Dues,
    IReadOnlyList<Rate> Rates,
    IReadOnlyList<string> Assumed)
{
    /// <summary>The day from which it is reckoned.</summary>
    public DateOnly On => Years[0].On;

    /// <summary>All that becomes worse, year by year.</summary>
    public IEnumerable<Turn> Turns => Years.SelectMany(year => year.Turns);

    /// <summary>True when something is short today or becomes so, or finds no port.</summary>
    public bool ComesShort => Years.Any(year => year.Count(Verdict.Short) > 0 || year.WithoutPort > 0);
}
