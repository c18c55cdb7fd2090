namespace Headroom.Engineering.Racking;

/// <summary>Looks for places in a rack.</summary>
public static class RackFit
{
    // A rack of 60 units with twenty things is decided in a few hundred steps; what is harder is not found here.
    private const int MostSteps = 20_000;

    /// <summary>Looks for a place for each thing, the highest first, each at the first of its wishes that leaves a place for the others.</summary>
    /// <param name="height">Units of the rack; 1 or more.</param>
    /// <param name="filled">Units that are filled already, from 1 at the bottom.</param>
    /// <param name="things">How many units each fills, and whether it wants to be low.</param>
    /// <returns>The lowest unit of each in the order given, 0 for one without a place; the most units that were found a place together. Source: search with going back.</returns>
    public static IReadOnlyList<int> Place(int height, IReadOnlySet<int> filled, IReadOnlyList<(int Fills, bool Low)> things)
    {
        Require.Between(1, 200, height);
        var taken = new bool[height + 1];
        foreach (var unit in filled)
        {
            if (unit >= 1 && unit <= height)
                taken[unit] = true;
        }

        var order = Enumerable.Range(0, things.Count).OrderByDescending(at => things[at].Fills).ToArray();
        var search = new Search(height, taken, things, order);
        search.From(0);
        return search.Best;
    }

    private sealed class Search(int height, bool[] taken, IReadOnlyList<(int Fills, bool Low)> things, int[] order)
    {
        private readonly int[] _now = new int[things.Count];
        private int _steps;
        private int _bestUnits = -1;

        public int[] Best { get; private set; } = new int[things.Count];

        public bool From(int at)
        {
            Keep();
            if (at == order.Length)
                return _now.All(lowest => lowest > 0);
            var (fills, low) = things[order[at]];
            for (var wish = 0; wish <= height - fills && _steps++ < MostSteps; wish++)
            {
                var lowest = low ? wish + 1 : height - fills + 1 - wish;
                if (!IsFree(lowest, fills))
                    continue;
                Mark((lowest, fills), true);
                _now[order[at]] = lowest;
                if (From(at + 1))
                    return true;
                Mark((lowest, fills), false);
                _now[order[at]] = 0;
            }

            // Without this one: perhaps the rest has a place.
            return _steps < MostSteps && From(at + 1);
        }

        private void Keep()
        {
            var units = 0;
            for (var i = 0; i < _now.Length; i++)
                units += _now[i] > 0 ? things[i].Fills : 0;
            if (units <= _bestUnits)
                return;
            _bestUnits = units;
            Best = [.. _now];
        }

        private bool IsFree(int lowest, int fills)
        {
            for (var unit = lowest; unit < lowest + fills; unit++)
            {
                if (taken[unit])
                    return false;
            }

            return true;
        }

        private void Mark((int Lowest, int Fills) place, bool isTaken)
        {
            for (var unit = place.Lowest; unit < place.Lowest + place.Fills; unit++)
                taken[unit] = isTaken;
        }
    }
}
