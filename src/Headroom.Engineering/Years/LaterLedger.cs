using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Years;

/// <summary>The entries of a site as it will be at some moment.</summary>
/// <param name="Months">How many months from today.</param>
/// <param name="On">The day.</param>
/// <param name="Entries">The entries, worst first, those of money behind the others.</param>
/// <param name="Added">What was added by then.</param>
internal sealed record LaterLedger(int Months, DateOnly On, IReadOnlyList<LedgerEntry> Entries, IReadOnlyList<AddedDevices> Added)
{
    private Dictionary<string, LedgerEntry>? _byId;

    /// <summary>The entry of an id; null when there is none then.</summary>
    public LedgerEntry? Of(string id) => (_byId ??= ById()).GetValueOrDefault(id);

    /// <summary>Those that are worse than they were at another moment, or new and not clear.</summary>
    public IEnumerable<LedgerEntry> WorseThan(LaterLedger before) =>
        Entries.Where(entry => entry.Verdict > (before.Of(entry.Id)?.Verdict ?? Verdict.Clear));

    private Dictionary<string, LedgerEntry> ById()
    {
        var all = new Dictionary<string, LedgerEntry>(Entries.Count);
        foreach (var entry in Entries)
            all[entry.Id] = entry;
        return all;
    }
}
