using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;

namespace Headroom.Planning.Jobs;

/// <summary>One plan while it is worked out: what may be bought, the packing, and the search.</summary>
internal sealed class PlanWork
{
    /// <summary>How far above the cheapest designs are looked at, as a share of its cost.</summary>
    public const double Dearer = 0.15;

    // More than any switch costs, in coins.
    private const long PerBox = 1_000_000_000;

    private const int MostFound = 14;
    private const int MostTries = 400;

    private readonly PlanRequest _request;
    private readonly PlanMemory _memory;
    private readonly Dictionary<string, PlaceFound> _places = [];
    private LinkRates _rates = LinkRates.Any;
    private long? _below;
    private int _tries = MostTries;
    private JobPacking? _other;
    private List<Candidate> _foundWithUnknown = [];
    private (long? Best, long Bound) _told;
    private readonly List<RefusedSet> _setAside;

    /// <summary>Begins a plan of a job whose readings are left out.</summary>
    public PlanWork(Job job, Catalogue catalogue, PlanRequest request, PlanMemory? memory = null)
    {
        (Job, Catalogue, _request) = (job, catalogue, Telling(WithKept(job, request)));
        request = _request;
        Gate = new Gate(job, catalogue, request);
        _memory = memory ?? new PlanMemory();
        var purchases = new Purchases(job, catalogue, request, Gate, _memory);
        var may = purchases.Find(PlaceList.Of(job, request.Pins));
        NotKnown = purchases.NotKnown;
        _setAside = purchases.SetAside;
        Packing = new JobPacking(job, catalogue, request, may, (_memory, _rates));
        Search = Looking();
    }

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>The catalogue.</summary>
    public Catalogue Catalogue { get; }

    /// <summary>Has designs studied.</summary>
    public Gate Gate { get; }

    /// <summary>The job as a packing.</summary>
    public JobPacking Packing { get; private set; }

    /// <summary>The search.</summary>
    public Looking Search { get; private set; }

    /// <summary>What is asked for.</summary>
    public PlanRequest Request => _request;

    /// <summary>What was set aside for want of a figure.</summary>
    public IReadOnlyList<Purchase> NotKnown { get; }

    /// <summary>What lost, and what was not considered.</summary>
    public IEnumerable<RefusedSet> Refused => [.. Search.Refused, .. _setAside];

    /// <summary>What was taken for granted.</summary>
    public IReadOnlyList<string> Assumed => Packing.Assumed;

    /// <summary>A design found at once, before any search; null when none came up.</summary>
    public Candidate? First { get; private set; }

    /// <summary>Finds a design at once, tells of it, and keeps it for when the search is stopped before it has come to one.</summary>
    public void LookFirst()
    {
        if (Packing.Unserved().Any())
            return;
        First = FirstDesign.Of(Packing, Gate, _request);
        if (First is null)
            return;
        Search.Known = UnitPrices.Coins(First.Cost);
        _request.Effort.Told?.Invoke(Search.Known.Value, 0);
    }

    /// <summary>Looks for designs; false when there is none.</summary>
    /// <param name="tries">The most sets that are tried.</param>
    public bool Look(int tries = MostTries)
    {
        _tries = tries;
        Run();
        if (Search.Found.Count == 0 && Search.Refused.Exists(refused => refused.Entry?.StartsWith("traffic/", StringComparison.Ordinal) == true))
            Faster((0, LinkKind.Inner, 1e10));
        // Stopped, or tried too much: the one found at once is still one.
        if (Search.Found.Count == 0 && First is not null)
            Search.Found.Add(First);
        if (Search.Found.Count > 0 || NotKnown.Count == 0 || _request.Effort.Stop.IsCancellationRequested)
            return Search.Found.Count > 0;
        // Nothing of which all is known will do: then what is not known is carried along, and asked for.
        CarriesUnknown = true;
        _told = default;
        Packing = WithNotKnown();
        Search = Looking();
        Run();
        return Search.Found.Count > 0;
    }

    /// <summary>Looks for the cheapest design that costs no more than one of the same units would; null when there is none.</summary>
    public Candidate? LookUpTo(Design design)
    {
        if (DesignCost.Of(design, Catalogue, Packing.Prices, _request.Pins.Owned) is not { } cost)
            return null;
        _below = UnitPrices.Coins(cost) + 2;
        Search.Below = _below;
        Run();
        return Search.Found.MinBy(one => one.Cost.Total);
    }

    /// <summary>Looks for a design that costs less than one that is known.</summary>
    /// <returns>Such a design; null when there is none. Proved says whether that is sure.</returns>
    public (Candidate? Found, bool Proved) LookBelow(PlanCost known)
    {
        _below = UnitPrices.Coins(known);
        Search.Below = _below;
        Run();
        var found = Search.Found.MinBy(one => one.Cost.Total);
        return (found?.Cost.Total < known.Total ? found : null, found?.Cost.Total < known.Total || (!Search.GaveUp && !(Search.Bound < _below)));
    }

    /// <summary>True when units are taken of which something is not known that a limit hangs on.</summary>
    public bool CarriesUnknown { get; private set; }

    /// <summary>Looks for the cheapest with all units, those of which something is not known too.</summary>
    public Looking WithUnknown()
    {
        _other = WithNotKnown();
        Keep(_other);
        var only = _request with { OnlyCheapest = true, Effort = _request.Effort with { Told = null } };
        Looking search = PlaceSplit.Fits(_other) ? new SplitSearch(_other, Gate, only, []) : new Search(_other, Gate, only);
        search.Run(cost => cost, 1, MostTries);
        _foundWithUnknown = search.Found;
        return search;
    }

    /// <summary>Looks for the fewest switches, and of those for the cheapest.</summary>
    public Looking Fewest()
    {
        var only = _request with { OnlyCheapest = true, Effort = _request.Effort with { Told = null } };
        Looking search = PlaceSplit.Fits(Packing) ? new SplitSearch(Packing, Gate, only, [], PerBox) : new Search(Packing, Gate, only, perBox: PerBox);
        search.Run(cost => cost, 1, MostTries);
        return search;
    }

    /// <summary>The packing that a design was found in.</summary>
    public JobPacking PackingOf(Candidate found) => _foundWithUnknown.Contains(found) ? _other! : Packing;

    private JobPacking WithNotKnown() => new(Job, Catalogue, _request, [.. Packing.Purchases, .. NotKnown], (_memory, _rates));

    // A link was too slow: the same with faster ones.
    private void Faster((int Place, LinkKind Kind, double Bits) rate)
    {
        _rates = _rates.With(rate);
        Packing = Packing.With(_rates);
        var known = Search.Known;
        Search = Looking();
        (Search.Below, Search.Known) = (_below, known);
        Run();
    }

    // Those who look on are told of the best of all, and what nothing costs less than, so that neither is ever taken back.
    private PlanRequest Telling(PlanRequest request) => request.Effort.Told is not { } told ? request : request with
    {
        Effort = request.Effort with
        {
            Told = (best, bound) =>
            {
                _told.Best = best > 0 && !(best >= _told.Best) ? best : _told.Best;
                _told.Bound = Math.Max(bound, _told.Bound);
                told(_told.Best ?? 0, Math.Min(_told.Bound, _told.Best ?? long.MaxValue));
            },
        },
    };

    private static PlanRequest WithKept(Job job, PlanRequest request)
    {
        var models = request.Pins.Keep.Select(id => Engineering.Study.DesignOf(job, request.Today)!.Switches.First(unit => unit.Id == id).Model!).ToList();
        var owned = models.Concat(request.Pins.Owned.SelectMany(pair => Enumerable.Repeat(pair.Key, pair.Value))).GroupBy(model => model).ToDictionary(group => group.Key, group => group.Count());
        return request with { Pins = request.Pins with { Owned = owned } };
    }

    // What stays costs nothing, and stands where it stood.
    private void Keep(JobPacking packing)
    {
        foreach (var id in _request.Pins.Keep)
        {
            var unit = Engineering.Study.DesignOf(Job, _request.Today)!.Switches.First(unit => unit.Id == id);
            var model = Catalogue.Switches[unit.Model!];
            var space = Job.Survey.Racks.FirstOrDefault(rack => rack.Id == unit.Standing.In)?.In ?? unit.Standing.In;
            packing.Kept.Add((Math.Max(0, packing.Places.ToList().IndexOf(space)), Purchases.NameOf(model, DesignCost.SupplyOf(model, unit.Supply), owned: true)));
        }
    }

    private Looking Looking()
    {
        Packing.Kept.Clear();
        Keep(Packing);
        return Split();
    }

    private Looking Split() => PlaceSplit.Fits(Packing) ? new SplitSearch(Packing, Gate, _request, _places) : new Search(Packing, Gate, _request);

    private void Run()
    {
        if (Packing.Unserved().Any())
            return;
        if (_request.OnlyCheapest)
            Search.Run(cost => cost, 1, _tries);
        else
            Search.Run(cost => cost + (long)(cost * Dearer), MostFound, _tries);
        if (Search.TooSlow is { } rate)
            Faster(rate);
    }
}
