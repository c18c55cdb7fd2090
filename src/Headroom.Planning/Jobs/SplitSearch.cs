using Headroom.Domain.Plans;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>Each place by itself, then all together: the cheapest of each, then combinations in the order of what they cost.</summary>
internal sealed class SplitSearch(JobPacking packing, Gate gate, PlanRequest request) : Looking
{
    private const int MostEach = 3;
    private const int TriesEach = 40;
    private const int MostTogether = 60;

    private readonly List<int> _places = PlaceSplit.Used(packing);

    /// <inheritdoc/>
    public override void Run(Func<long, long> limit, int most, int tries)
    {
        var choices = new List<IReadOnlyList<Candidate>>();
        var known = new Dictionary<string, (int Place, List<Candidate> Found)>();
        var bound = 0L;
        var closed = true;
        foreach (var place in _places)
        {
            var key = PlaceSplit.KeyOf(packing, place);
            if (!known.TryGetValue(key, out var at))
            {
                var search = new Search(packing, gate, request, place: place);
                search.Run(cost => cost + cost / 50, MostEach, TriesEach);
                Refused.AddRange(search.Refused.Select(refused => refused with { Bought = $"{packing.Places[place]}: {refused.Bought}", Total = null }));
                GaveUp |= search.GaveUp;
                at = known[key] = (place, [.. search.Found.OrderBy(found => found.Cost.Total).ThenBy(found => found.Bought, StringComparer.Ordinal)]);
                if (at.Found.Count == 0)
                    return;
                closed &= search.Bound is not { } some || some >= UnitPrices.Coins(at.Found[0].Cost);
                GaveUp |= !closed;
            }

            bound += UnitPrices.Coins(at.Found[0].Cost);
            choices.Add(at.Place == place ? at.Found : [.. at.Found.Select(found => new PlaceMove(packing, at.Place, place).Of(found))]);
        }

        Together(choices, limit, most);
        Bound ??= bound;
    }

    // The next combination differs in one place from one that was tried.
    private void Together(List<IReadOnlyList<Candidate>> choices, Func<long, long> limit, int most)
    {
        var queue = new PriorityQueue<int[], long>();
        var seen = new HashSet<string>();
        Push(new int[choices.Count]);
        for (var i = 0; i < MostTogether && Found.Count < most && queue.TryPeek(out _, out var cost) && !request.Effort.Stop.IsCancellationRequested; i++)
        {
            Bound = cost;
            var cheapest = Found.Count > 0 ? Found.Min(found => UnitPrices.Coins(found.Cost)) : (long?)null;
            request.Effort.Told?.Invoke(cheapest ?? 0, cost);
            if (cheapest is { } least && cost > limit(least))
                return;
            var picked = queue.Dequeue();
            Try([.. picked.Select((number, place) => choices[place][number])]);
            for (var place = 0; place < picked.Length; place++)
            {
                if (picked[place] + 1 < choices[place].Count)
                    Push([.. picked.Select((number, at) => at == place ? number + 1 : number)]);
            }
        }

        void Push(int[] picked)
        {
            if (seen.Add(string.Join(',', picked)))
                queue.Enqueue(picked, picked.Select((number, place) => UnitPrices.Coins(choices[place][number].Cost)).Sum());
        }
    }

    private void Try(List<Candidate> parts)
    {
        var set = new BoughtSet(parts.SelectMany(part => part.Set.Boxes).ToDictionary(), [.. parts.SelectMany(part => part.Set.Extras)]);
        var packed = new Packed(parts.Sum(part => part.Packed.Cost), parts.Sum(part => part.Packed.Bound), [.. parts.SelectMany(part => part.Packed.Boxes)]);
        var design = DesignMaker.Make(packing, packed, set, "proposed");
        var ledger = gate.Study(design);
        var cost = DesignCost.Of(design, packing.Catalogue, packing.Prices, request.Pins.Owned)!;
        var bought = DesignCost.Bought(design, packing.Catalogue);
        if (gate.NotKept(ledger) is [var worst, ..])
            Refused.Add(new RefusedSet("refused", bought, cost.Total, worst.Id, PlanWords.Of(worst)));
        else
            Found.Add(new(set, packed, design, ledger, cost, bought));
    }
}
