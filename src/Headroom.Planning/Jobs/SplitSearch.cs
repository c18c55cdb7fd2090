using Headroom.Domain.Plans;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>Each place by itself, then all together: first the cheapest of each, then combinations in the order of what they cost.</summary>
internal sealed class SplitSearch(JobPacking packing, Gate gate, PlanRequest request, Dictionary<string, PlaceFound> known, long perBox = 0) : Looking
{
    private const int MostEach = 3;
    private const int TriesEach = 60;
    private const int MostTogether = 60;

    private readonly List<int> _places = PlaceSplit.Used(packing);
    private readonly Dictionary<int, string> _keys = PlaceSplit.Used(packing).ToDictionary(place => place, place => PlaceSplit.KeyOf(packing, place));
    private readonly HashSet<string> _tried = [];

    /// <inheritdoc/>
    public override void Run(Func<long, long> limit, int most, int tries)
    {
        if (Choices(1, cost => cost) is not { } cheapest)
            return;
        Together(cheapest, limit, most);
        if (TooSlow is not null || (request.OnlyCheapest && Found.Count > 0))
            return;
        if (Choices(MostEach, cost => cost + cost / 50) is { } choices)
            Together(choices, limit, most);
    }

    // Places that come to the same are looked at once.
    private List<IReadOnlyList<Candidate>>? Choices(int most, Func<long, long> limit)
    {
        var choices = new List<IReadOnlyList<Candidate>>();
        foreach (var place in _places)
        {
            var key = _keys[place];
            if (!known.TryGetValue(key, out var at))
                at = known[key] = new(place, new Search(packing, gate, request, place: place, perBox: perBox));
            if (at.Search.Found.Count < most && at.Place == place)
            {
                at.Search.Told = (_, _) => Tell();
                at.Search.Run(limit, most, TriesEach);
                Tell();
            }

            TooSlow ??= at.Search.TooSlow;
            GaveUp |= at.Search.GaveUp;
            if (at.Search.Found.Count == 0)
            {
                Refused.AddRange(at.Search.Refused.Select(refused => refused with { Bought = $"{packing.Places[place]}: {refused.Bought}", Total = null }));
                Bound = at.Search.Bound is null ? null : Floor();
                return null;
            }

            GaveUp |= at.Search.Bound is { } bound && bound < at.ByCost[0].Packed.Cost + perBox * at.ByCost[0].Design.Switches.Count;
            choices.Add(at.Place == place ? at.ByCost : [.. at.ByCost.Select(found => new PlaceMove(packing, at.Place, place).Of(found))]);
        }

        return choices;
    }

    // What no design costs less than, by what is known of each place by itself; nothing yet of those that were not looked at.
    private long Floor() => _places.Sum(place => known.TryGetValue(_keys[place], out var at) ? Floor(at.Search) : 0);

    private static long Floor(Search search)
    {
        var found = search.Found.Count > 0 ? search.Found.Min(one => one.Packed.Cost!.Value) : long.MaxValue;
        return Math.Min(found, search.Bound ?? found);
    }

    private void Tell() => request.Effort.Told?.Invoke(Found.Count > 0 ? Found.Min(found => UnitPrices.Coins(found.Cost)) : Known ?? 0, Floor());

    // The next combination differs in one place from one that was tried.
    private void Together(List<IReadOnlyList<Candidate>> choices, Func<long, long> limit, int most)
    {
        var queue = new PriorityQueue<int[], long>();
        var seen = new HashSet<string>();
        Push(new int[choices.Count]);
        for (var i = 0; i < MostTogether && Found.Count < most && TooSlow is null && queue.TryPeek(out _, out var cost) && !request.Effort.Stop.IsCancellationRequested; i++)
        {
            Bound = cost;
            var cheapest = Found.Count > 0 ? Found.Min(found => UnitPrices.Coins(found.Cost)) : (long?)null;
            request.Effort.Told?.Invoke(cheapest ?? Known ?? 0, cost);
            if (cheapest is { } least && cost > limit(least))
                return;
            var picked = queue.Dequeue();
            if (_tried.Add(Alike(picked, choices)))
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
                queue.Enqueue(picked, picked.Select((number, place) => choices[place][number].Packed.Cost ?? 0).Sum());
        }
    }

    // What only trades places that come to the same is no other design.
    private string Alike(int[] picked, List<IReadOnlyList<Candidate>> choices) =>
        string.Join('+', picked.Select((number, place) => $"{_keys[_places[place]]}#{choices[place][number].Bought}").Order(StringComparer.Ordinal));

    private void Try(List<Candidate> parts)
    {
        var set = new BoughtSet(parts.SelectMany(part => part.Set.Boxes).ToDictionary(), [.. parts.SelectMany(part => part.Set.Extras)]);
        var packed = new Packed(parts.Sum(part => part.Packed.Cost), parts.Sum(part => part.Packed.Bound), [.. parts.SelectMany(part => part.Packed.Boxes)]);
        var design = DesignMaker.Make(packing, packed, set, "proposed");
        var ledger = gate.Study(design);
        var cost = DesignCost.Of(design, packing.Catalogue, packing.Prices, request.Pins.Owned)!;
        var bought = DesignCost.Bought(design, packing.Catalogue);
        var broken = gate.NotKept(ledger);
        TooSlow ??= broken.Select(entry => LinkRates.TooSlow(entry, packing, packed)).FirstOrDefault(slow => slow is not null);
        if (broken is [var worst, ..])
            Refused.Add(new RefusedSet("refused", bought, cost.Total, worst.Id, PlanWords.Of(worst)));
        else
            Found.Add(new(set, packed, design, ledger, cost, bought));
    }
}
