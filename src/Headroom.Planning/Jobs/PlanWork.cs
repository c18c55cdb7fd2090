using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;

namespace Headroom.Planning.Jobs;

/// <summary>One plan while it is worked out: what may be bought, the packing, and the search.</summary>
internal sealed class PlanWork
{
    /// <summary>How far above the cheapest designs are looked at, as a share of its cost.</summary>
    public const double Dearer = 0.15;

    private const int MostFound = 14;
    private const int MostTries = 400;

    private readonly PlanRequest _request;
    private readonly PlanMemory _memory;
    private double _bits;
    private readonly List<RefusedSet> _setAside;

    /// <summary>Begins a plan of a job whose readings are left out.</summary>
    public PlanWork(Job job, Catalogue catalogue, PlanRequest request, PlanMemory? memory = null)
    {
        (Job, Catalogue, _request) = (job, catalogue, request);
        Gate = new Gate(job, catalogue, request);
        _memory = memory ?? new PlanMemory();
        var purchases = new Purchases(job, catalogue, request, Gate, _memory);
        var may = purchases.Find(PlaceList.Of(job, request.Pins));
        NotKnown = purchases.NotKnown;
        _setAside = purchases.SetAside;
        Packing = new JobPacking(job, catalogue, request, may, (_memory, 0));
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

    /// <summary>Looks for designs; false when there is none.</summary>
    public bool Look()
    {
        Run();
        if (Search.Found.Count == 0 && Search.Refused.Exists(refused => refused.Entry?.StartsWith("traffic/", StringComparison.Ordinal) == true))
            Faster();
        if (Search.Found.Count > 0 || NotKnown.Count == 0 || _request.Effort.Stop.IsCancellationRequested)
            return Search.Found.Count > 0;
        // Nothing of which all is known will do: then what is not known is carried along, and asked for.
        Packing = new JobPacking(Job, Catalogue, _request, [.. Packing.Purchases, .. NotKnown], (_memory, _bits));
        Search = Looking();
        Run();
        return Search.Found.Count > 0;
    }

    // Links of a gigabit were too slow: the same with ten.
    private void Faster()
    {
        _bits = 1e10;
        Packing = new JobPacking(Job, Catalogue, _request, Packing.Purchases, (_memory, _bits));
        Search = Looking();
        Run();
    }

    private Looking Looking() => PlaceSplit.Fits(Packing) ? new SplitSearch(Packing, Gate, _request) : new Search(Packing, Gate, _request);

    private void Run()
    {
        if (Packing.Unserved().Any())
            return;
        if (_request.OnlyCheapest)
            Search.Run(cost => cost, MostFound, MostTries);
        else
            Search.Run(cost => cost + (long)(cost * Dearer), MostFound, MostTries);
    }
}
