using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>A faster line out of the house.</summary>
internal sealed class LargerLine : IRemedyKind
{
    // What lines are sold as [Mb/s]: common practice, no source.
    private static readonly int[] Rates = [50, 100, 250, 500, 1000, 2000];

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfTraffic(entry) || entry.Quantity is not ("down" or "up"))
            yield break;
        foreach (var line in at.Survey.Lines.Where(line => line.Id == entry.Subject))
        {
            var now = entry.Quantity == "down" ? line.Down : line.Up;
            foreach (var rate in Rates.Where(rate => rate * 1e6 > now?.Value.Value).Take(3))
            {
                var given = Delta.Value<BitsPerSecond>($"{rate} Mb/s");
                var change = entry.Quantity == "down" ? new LineChange(line.Id, Place.None) { Down = given } : new LineChange(line.Id, Place.None) { Up = given };
                yield return new("larger line", $"{line.Id}: {given.Written} {entry.Quantity}", Delta.Building(at, new() { Lines = [change] })) { Unpriced = "what the contract costs, each month" };
            }
        }
    }
}
