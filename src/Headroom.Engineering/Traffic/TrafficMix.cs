using Headroom.Domain.Catalogues;

namespace Headroom.Engineering.Traffic;

/// <summary>What many devices ask together: how many there are of each kind of figures.</summary>
internal sealed class TrafficMix
{
    private readonly Dictionary<TrafficFigures, int> _counts = new(ReferenceEqualityComparer.Instance);

    /// <summary>How many of each.</summary>
    public IReadOnlyDictionary<TrafficFigures, int> Counts => _counts;

    /// <summary>Devices of which figures are known.</summary>
    public int Known { get; private set; }

    /// <summary>All devices.</summary>
    public int All { get; private set; }

    /// <summary>Adds devices alike; null figures are those of which nothing is known.</summary>
    public void Add(TrafficFigures? figures, int count = 1)
    {
        All += count;
        if (figures is null)
            return;
        Known += count;
        _counts[figures] = _counts.GetValueOrDefault(figures) + count;
    }

    /// <summary>Adds all of another.</summary>
    public void Add(TrafficMix other)
    {
        foreach (var (figures, count) in other._counts)
            Add(figures, count);
        All += other.All - other.Known;
    }
}
