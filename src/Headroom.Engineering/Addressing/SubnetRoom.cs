using Headroom.Domain.Addresses;

namespace Headroom.Engineering.Addressing;

/// <summary>Takes subnets out of a range, each at an address that is a multiple of its size, and none where something is already.</summary>
/// <param name="from">The range.</param>
public sealed class SubnetRoom(Ip4Range from)
{
    private readonly List<Ip4Range> _taken = [];

    /// <summary>Keeps a range clear.</summary>
    /// <param name="range">The range.</param>
    public void Keep(Ip4Range range) => _taken.Add(range);

    /// <summary>Takes the first free place for a subnet.</summary>
    /// <param name="prefix">Its prefix.</param>
    /// <returns>The subnet; null when no place is free. Source: RFC 950, aligned first fit.</returns>
    public Ip4Range? Take(int prefix)
    {
        if (prefix < from.Prefix)
            return null;
        var size = 1L << 32 - prefix;
        var (at, end) = ((long)from.First.Value, (long)from.Last.Value + 1);
        while (at + size <= end)
        {
            var range = new Ip4Range(new Ip4((uint)at), prefix);
            var behind = BehindWhatMeets(range);
            if (behind < 0)
            {
                _taken.Add(range);
                return range;
            }

            // The next multiple of its size behind what is in the way.
            at = (behind + size - 1) / size * size;
        }

        return null;
    }

    /// <summary>Takes places for several, the largest first, of equal ones by name.</summary>
    /// <param name="needs">Name and number of devices of each.</param>
    /// <returns>The subnets in that order, null for those without a place.</returns>
    public IReadOnlyList<(string Name, Ip4Range? Range)> TakeAll(IEnumerable<(string Name, long Hosts)> needs) =>
        [.. needs.OrderByDescending(need => need.Hosts).ThenBy(need => need.Name, StringComparer.Ordinal)
            .Select(need => (need.Name, SubnetSize.PrefixFor(need.Hosts) is { } prefix ? Take(prefix) : null))];

    /// <summary>The widest free range.</summary>
    /// <returns>Its prefix; null when nothing is free.</returns>
    public int? WidestFree()
    {
        for (var prefix = from.Prefix; prefix <= 30; prefix++)
        {
            if (Take(prefix) is not { } range)
                continue;
            _taken.Remove(range);
            return prefix;
        }

        return null;
    }

    private long BehindWhatMeets(Ip4Range range)
    {
        foreach (var taken in _taken)
        {
            if (taken.Overlaps(range))
                return (long)taken.Last.Value + 1;
        }

        return -1;
    }
}
