using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering;
using Headroom.Engineering.Acoustics;
using Headroom.Engineering.Failure;
using Headroom.Engineering.Heat;
using Headroom.Engineering.Power;
using Headroom.Engineering.Racking;
using Headroom.Engineering.Standby;
using Headroom.Engineering.Traffic;

namespace Headroom.Planning.Jobs;

/// <summary>Has designs studied, and says which entries stand in their way. What the building alone makes short is no design's fault.</summary>
internal sealed class Gate
{
    // What hangs on no design at all cannot be said of these: without one nothing is served.
    private static readonly string[] OfDesigns = [PowerLedger.Discipline, StandbyLedger.Discipline, TrafficLedger.Discipline, FailureLedger.Discipline];

    private readonly Job _job;
    private readonly Catalogue _catalogue;
    private readonly PlanRequest _request;
    private readonly Dictionary<string, Verdict> _building;

    /// <summary>Studies the building without any design.</summary>
    public Gate(Job job, Catalogue catalogue, PlanRequest request)
    {
        (_job, _catalogue, _request) = (job, catalogue, request);
        var bare = new Design("none", null, [], [], [], [], [], [], Place.None);
        var disciplines = Engineering.Study.Disciplines.Where(name => !OfDesigns.Contains(name)).ToList();
        _building = Studied(job, bare, disciplines).Entries.ToDictionary(entry => entry.Id, entry => entry.Verdict);
    }

    /// <summary>How many designs were studied.</summary>
    public int Count { get; private set; }

    /// <summary>Studies a design.</summary>
    public Ledger Study(Design design) => Study(design, _job);

    /// <summary>Studies a design that a better one is looked for at once: it is not counted among those that were studied.</summary>
    public Ledger Glance(Design design) => Studied(_job, design, null);

    /// <summary>Studies a design of a part of the job.</summary>
    public Ledger Study(Design design, Job job)
    {
        Count++;
        return Studied(job, design, null);
    }

    /// <summary>What of a ledger is not kept and is the design's doing, the worst first.</summary>
    public List<LedgerEntry> NotKept(Ledger ledger) =>
        [.. ledger.Entries.Where(entry => entry.Verdict is Verdict.Short or Verdict.Tight && Beyond(entry)).OrderByDescending(entry => entry.Verdict)];

    /// <summary>What a unit alone comes to, in a place and with nothing plugged in.</summary>
    public AloneAnswer Alone(Purchase purchase, string? place)
    {
        var midspans = Enumerable.Range(1, purchase.Midspans?.Count ?? 0).Select(number => new PlacedInjector($"midspan-{number}", purchase.Midspans!.Model.Id, DesignMaker.Standing(purchase.Midspans.Model.Body, place, _job.Survey), null, [], Place.None)).ToList();
        var design = new Design("alone", null, [DesignMaker.Switch("switch-1", purchase, place, _job.Survey)], midspans, [], [], [], [], Place.None);
        var empty = _job with { Survey = _job.Survey with { Endpoints = [], Drops = [] }, Policy = _job.Policy with { Outage = OutagePolicy.None } };
        var ledger = Studied(empty, design, [PowerLedger.Discipline, HeatLedger.Discipline, AcousticLedger.Discipline, RackingLedger.Discipline, FailureLedger.Discipline]);
        var heard = new Dictionary<string, double>();
        foreach (var figure in ledger.Figures)
        {
            if (figure.What.StartsWith("the equipment alone", StringComparison.Ordinal) && figure.Value is { } level)
                heard[figure.Subject] = level;
        }

        return new(ledger.Entries.Where(entry => entry.Verdict != Verdict.Clear && Beyond(entry)).MaxBy(entry => entry.Verdict), heard);
    }

    private bool Beyond(LedgerEntry entry) => !_building.TryGetValue(entry.Id, out var before) || before < entry.Verdict;

    private Ledger Studied(Job job, Design design, IReadOnlyList<string>? only) => Engineering.Study.Run(
        job with { Designs = [design], Chosen = null },
        _catalogue,
        new StudyRequest(design.Id, _request.On, [], only) { FirmReadings = _request.FirmReadings });
}
