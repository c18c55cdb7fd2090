using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Acoustics;
using Headroom.Engineering.Addressing;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Cabling;
using Headroom.Engineering.Failure;
using Headroom.Engineering.Heat;
using Headroom.Engineering.Money;
using Headroom.Engineering.Power;
using Headroom.Engineering.Racking;
using Headroom.Engineering.Reliability;
using Headroom.Engineering.Standby;
using Headroom.Engineering.Traffic;
using Headroom.Engineering.Years;

namespace Headroom.Engineering;

/// <summary>The one door to the sums: binds a job to the catalogue, works out each discipline in a fixed order, and keeps the ledger.</summary>
public static class Study
{
    /// <summary>The disciplines there are, in the order in which they are worked out.</summary>
    public static IReadOnlyList<string> Disciplines { get; } =
    [
        PowerLedger.Discipline, CablingLedger.Discipline, HeatLedger.Discipline, AcousticLedger.Discipline, StandbyLedger.Discipline,
        TrafficLedger.Discipline, FailureLedger.Discipline, ReliabilityLedger.Discipline,
        RackingLedger.Discipline, AddressingLedger.Discipline, MoneyLedger.Discipline,
    ];

    /// <summary>Studies one design of a job.</summary>
    /// <param name="job">A job without errors.</param>
    /// <param name="catalogue">The catalogue it names its models from.</param>
    /// <param name="request">What is wanted.</param>
    /// <returns>The ledger, worst entries first; the same for the same input, always.</returns>
    /// <exception cref="ArgumentException">The design does not exist or a name is unknown: the job was not checked.</exception>
    public static Ledger Run(Job job, Catalogue catalogue, StudyRequest request) => LedgerOf(Results(job, catalogue, request), request);

    /// <summary>Keeps the ledger of a design, for whoever needs its results as well.</summary>
    /// <param name="results">The results of the design.</param>
    /// <param name="request">What is wanted, as the results were asked for.</param>
    /// <returns>The ledger, worst entries first.</returns>
    public static Ledger LedgerOf(DesignResults results, StudyRequest request)
    {
        var draft = new LedgerDraft(results.Bound.Job, request.Only is null ? Disciplines : [.. Disciplines.Where(request.Only.Contains)]);
        // Later disciplines need what the ports give, so power is worked out even where only they are wanted.
        var power = results.Power;
        if (draft.Wants(PowerLedger.Discipline))
            draft.Add(PowerLedger.Entries(power), () => new PowerExpectations(power), () => PowerFigures.Of(power), () => PowerAnswers.Of(power));
        // The two that take longest on a large site, and need nothing of each other.
        if (draft.Wants(CablingLedger.Discipline) && draft.Wants(TrafficLedger.Discipline))
            Shares.Both(results.Bound.Endpoints.Count, () => results.Cabling, () => results.Traffic);
        AddBuilding(draft, results);
        AddService(draft, results);
        AddOffice(draft, results);
        return draft.Ledger(results.Bound.Design.Id, request.On);
    }

    /// <summary>Works out one design of a job for whoever draws or writes it: every result with its intermediate figures, each when it is first asked for.</summary>
    /// <param name="job">A job without errors.</param>
    /// <param name="catalogue">The catalogue it names its models from.</param>
    /// <param name="request">What is wanted.</param>
    /// <returns>The results of all disciplines.</returns>
    /// <exception cref="ArgumentException">The design does not exist or a name is unknown: the job was not checked.</exception>
    public static DesignResults Results(Job job, Catalogue catalogue, StudyRequest request)
    {
        var design = DesignOf(job, request.Design)
            ?? throw new ArgumentException($"'{request.Design}' is no design of this job; it has {string.Join(", ", job.Designs.Select(d => d.Id))}.", nameof(request));
        return new DesignResults(Binder.Bind(job, catalogue, design, request.Counts), request.FirmReadings, request.DrawMemory);
    }

    // Cables, air and sound.
    private static void AddBuilding(LedgerDraft draft, DesignResults results)
    {
        if (draft.Wants(CablingLedger.Discipline))
        {
            var cabling = results.Cabling;
            draft.Add(CablingLedger.Entries(cabling), () => new CablingExpectations(cabling), () => CablingFigures.Of(cabling));
        }

        if (draft.Wants(HeatLedger.Discipline))
        {
            var heat = results.Heat;
            draft.Add(HeatLedger.Entries(heat), () => new HeatExpectations(heat), () => HeatFigures.Of(heat), () => HeatAnswers.Of(heat));
        }

        if (draft.Wants(AcousticLedger.Discipline))
        {
            var sound = results.Sound;
            draft.Add(AcousticLedger.Entries(sound), () => new AcousticExpectations(sound), () => AcousticFigures.Of(sound), () => AcousticAnswers.Of(sound));
        }
    }

    // What goes on working, how much it carries, and what it does not survive.
    private static void AddService(LedgerDraft draft, DesignResults results)
    {
        if (draft.Wants(StandbyLedger.Discipline))
        {
            var standby = results.Standby;
            draft.Add(StandbyLedger.Entries(standby), () => new StandbyExpectations(standby), () => StandbyFigures.Of(standby), () => StandbyAnswers.Of(standby));
        }

        if (draft.Wants(TrafficLedger.Discipline))
        {
            var traffic = results.Traffic;
            draft.Add(TrafficLedger.Entries(traffic), () => new TrafficExpectations(traffic), () => TrafficFigureList.Of(traffic), () => TrafficAnswers.Of(traffic));
        }

        if (draft.Wants(FailureLedger.Discipline))
        {
            var failures = results.Failures;
            draft.Add(FailureLedger.Entries(failures), null, () => FailureFigures.Of(failures), () => FailureAnswers.Of(failures));
        }

        // Without a fleet there is nothing to say, and its statistics are not even loaded.
        if (results.Bound.Job.Fleet.Count > 0 && draft.Wants(ReliabilityLedger.Discipline))
        {
            var fleet = ReliabilityStudy.Of(results.Bound);
            draft.Add(ReliabilityLedger.Entries(fleet), null, () => ReliabilityFigures.Of(fleet), () => ReliabilityAnswers.Of(fleet));
        }
    }

    // Racks, addresses and money.
    private static void AddOffice(LedgerDraft draft, DesignResults results)
    {
        if (draft.Wants(RackingLedger.Discipline))
        {
            var racking = results.Racking;
            draft.Add(RackingLedger.Entries(racking), null, null, () => RackingAnswers.Of(racking));
        }

        if (draft.Wants(AddressingLedger.Discipline) && results.Addressing is { } addressing)
            draft.Add(AddressingLedger.Entries(addressing), null, null, () => AddressingAnswers.Of(addressing));
        if (draft.Wants(MoneyLedger.Discipline) && results.Money is { } money)
            draft.Add(MoneyLedger.Entries(money), null, () => MoneyFigures.Of(money), () => MoneyAnswers.Of(money));
    }

    /// <summary>What is due at one design of a job: batteries, warranties, tests, cleaning.</summary>
    /// <param name="job">A job without errors.</param>
    /// <param name="catalogue">The catalogue it names its models from.</param>
    /// <param name="request">What is wanted.</param>
    /// <param name="years">How many years from the day of the request; 1 or more.</param>
    /// <returns>What is due, in order of days; what has no day yet behind, with its question.</returns>
    public static IReadOnlyList<DueDate> Due(Job job, Catalogue catalogue, StudyRequest request, int years)
    {
        var design = DesignOf(job, request.Design) ?? throw new ArgumentException($"'{request.Design}' is no design of this job.", nameof(request));
        return DueDates.Of(job, catalogue, (request, design), years);
    }

    /// <summary>The whole design that a request means.</summary>
    /// <param name="job">The job.</param>
    /// <param name="id">The id; null for the chosen design, else the first.</param>
    /// <returns>The design, or null when there is none of that id.</returns>
    public static Design? DesignOf(Job job, string? id)
    {
        var wanted = id ?? job.Chosen ?? (job.Designs.Count > 0 ? job.Designs[0].Id : null);
        return wanted is null ? null : DesignLineage.Whole(job, wanted);
    }
}
