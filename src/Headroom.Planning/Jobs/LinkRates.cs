using Headroom.Domain.Ledgers;
using Headroom.Engineering.Traffic;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>The least rate of links, where the study found a slower one too slow.</summary>
internal sealed class LinkRates
{
    private readonly Dictionary<(int Place, LinkKind Kind), double> _bits = [];

    /// <summary>Any rate will do.</summary>
    public static LinkRates Any { get; } = new();

    /// <summary>The least rate [bit/s]; 0 for any. Links inside places have the same in all.</summary>
    public double Of(int place, LinkKind kind) => _bits.GetValueOrDefault((kind == LinkKind.Inner ? 0 : place, kind));

    /// <summary>The same with another least rate of some link.</summary>
    public LinkRates With((int Place, LinkKind Kind, double Bits) more)
    {
        var rates = new LinkRates();
        foreach (var (at, bits) in _bits)
            rates._bits[at] = bits;
        rates._bits[(more.Kind == LinkKind.Inner ? 0 : more.Place, more.Kind)] = more.Bits;
        return rates;
    }

    /// <summary>The link that an entry finds too slow: the one that leads out of a place, on which all of it goes whatever hangs where.</summary>
    /// <param name="entry">An entry that is not kept.</param>
    /// <param name="packing">The packing.</param>
    /// <param name="packed">What is packed, in the order of the switches.</param>
    /// <returns>The link and a rate above its own; null for another entry, or where nothing is faster.</returns>
    public static (int Place, LinkKind Kind, double Bits)? TooSlow(LedgerEntry entry, JobPacking packing, Packed packed)
    {
        if (entry is not { Discipline: TrafficLedger.Discipline, Quantity: "uplink", Unit: "Mb/s", Limit: { } limit })
            return null;
        var number = Enumerable.Range(0, packed.Boxes.Count).FirstOrDefault(i => entry.Subject == $"switch-{i + 1}", -1);
        if (number < 0 || !packed.Boxes[number].IsHead)
            return null;
        var place = packed.Boxes[number].Place;
        var kind = place == packing.Line.Root ? LinkKind.Line : LinkKind.Backbone;
        var bits = limit * 1e6 * 1.001;
        return packing.Line.HasFaster(place, kind, bits) ? (place, kind, bits) : null;
    }
}
