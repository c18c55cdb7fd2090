namespace Headroom.Planning.Packing;

/// <summary>Fills one box as full as it goes, by trying what may stand beside its first item.</summary>
internal sealed class FullestBox(IReadOnlyList<(int Way, long Load, int Count)> items, int[] left, long limit, int ports)
{
    // Enough for a box of five items out of a hundred; a box that is less than full then is full enough.
    private const int MostSteps = 20_000;

    private readonly int[] _counts = new int[items.Count];
    private int[] _best = [];
    private long _bestLoad = -1;
    private int _steps;

    /// <summary>The counts of the fullest box with one item in it for certain.</summary>
    public int[] With(int first)
    {
        _counts[first] = 1;
        Try(first, limit - items[first].Load, ports - 1);
        return _best;
    }

    private bool Try(int from, long room, int free)
    {
        if (limit - room > _bestLoad)
            (_bestLoad, _best) = (limit - room, [.. _counts]);
        if (room == 0 || ++_steps > MostSteps)
            return true;
        for (var i = from; i < items.Count && free > 0; i++)
        {
            if (_counts[i] >= left[i] || items[i].Load > room)
                continue;
            _counts[i]++;
            var done = Try(i, room - items[i].Load, free - 1);
            _counts[i]--;
            if (done)
                return true;
        }

        return false;
    }
}
