using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Acoustics;
using Headroom.Engineering.Addressing;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Cabling;
using Headroom.Engineering.Failure;
using Headroom.Engineering.Heat;
using Headroom.Engineering.MeasuredDraws;
using Headroom.Engineering.Money;
using Headroom.Engineering.Power;
using Headroom.Engineering.Racking;
using Headroom.Engineering.Reliability;
using Headroom.Engineering.Standby;
using Headroom.Engineering.Traffic;

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
    public static Ledger Run(Job job, Catalogue catalogue, StudyRequest request)
    {
        var design = DesignOf(job, request.Design)
            ?? throw new ArgumentException($"'{request.Design}' is no design of this job; it has {string.Join(", ", job.Designs.Select(d => d.Id))}.", nameof(request));
        var bound = Binder.Bind(job, catalogue, design, request.Counts);
        var draft = new LedgerDraft(job, request.Only is null ? Disciplines : [.. Disciplines.Where(request.Only.Contains)]);
        // Later disciplines need what the ports give, so power is worked out even where only they are wanted.
        var power = PowerStudy.Of(bound, MeasuredDrawStudy.Of(bound, request.FirmReadings));
        if (draft.Wants(PowerLedger.Discipline))
            draft.Add(PowerLedger.Entries(power), new PowerExpectations(power), () => PowerFigures.Of(power), () => PowerAnswers.Of(power));
        AddBuilding(draft, bound, power);
        AddService(draft, bound, power);
        AddOffice(draft, bound, power);
        return draft.Ledger(design.Id, request.On);
    }

    // Cables, air and sound.
    private static void AddBuilding(LedgerDraft draft, BoundDesign bound, PowerResult power)
    {
        if (draft.Wants(CablingLedger.Discipline))
        {
            var cabling = CablingStudy.Of(bound, new CableLoads(power).Of);
            draft.Add(CablingLedger.Entries(cabling), new CablingExpectations(cabling), () => CablingFigures.Of(cabling));
        }

        if (!draft.Wants(HeatLedger.Discipline) && !draft.Wants(AcousticLedger.Discipline))
            return;
        var heat = HeatOf(bound, power);
        if (draft.Wants(HeatLedger.Discipline))
            draft.Add(HeatLedger.Entries(heat), new HeatExpectations(heat), () => HeatFigures.Of(heat), () => HeatAnswers.Of(heat));
        if (draft.Wants(AcousticLedger.Discipline))
        {
            var sound = AcousticStudy.Of(bound, id => LoadOf(power, id), new InletAir(heat.InletOf, heat.CasesOf));
            draft.Add(AcousticLedger.Entries(sound), new AcousticExpectations(sound), () => AcousticFigures.Of(sound), () => AcousticAnswers.Of(sound));
        }
    }

    // What goes on working, how much it carries, and what it does not survive.
    private static void AddService(LedgerDraft draft, BoundDesign bound, PowerResult power)
    {
        if (draft.Wants(StandbyLedger.Discipline))
        {
            var standby = StandbyStudy.Of(bound, power);
            draft.Add(StandbyLedger.Entries(standby), new StandbyExpectations(standby), () => StandbyFigures.Of(standby), () => StandbyAnswers.Of(standby));
        }

        if (draft.Wants(TrafficLedger.Discipline))
        {
            var traffic = TrafficStudy.Of(bound);
            draft.Add(TrafficLedger.Entries(traffic), new TrafficExpectations(traffic), () => TrafficFigureList.Of(traffic), () => TrafficAnswers.Of(traffic));
        }

        if (draft.Wants(FailureLedger.Discipline))
        {
            var failures = FailureStudy.Of(bound);
            draft.Add(FailureLedger.Entries(failures), null, () => FailureFigures.Of(failures), () => FailureAnswers.Of(failures));
        }

        // Without a fleet there is nothing to say, and its statistics are not even loaded.
        if (bound.Job.Fleet.Count > 0 && draft.Wants(ReliabilityLedger.Discipline))
        {
            var fleet = ReliabilityStudy.Of(bound);
            draft.Add(ReliabilityLedger.Entries(fleet), null, () => ReliabilityFigures.Of(fleet), () => ReliabilityAnswers.Of(fleet));
        }
    }

    // Racks, addresses and money.
    private static void AddOffice(LedgerDraft draft, BoundDesign bound, PowerResult power)
    {
        if (draft.Wants(RackingLedger.Discipline))
        {
            var racking = RackingStudy.Of(bound, id => MainsHandover.MostWatts(power, id));
            draft.Add(RackingLedger.Entries(racking), null, null, () => RackingAnswers.Of(racking));
        }

        if (draft.Wants(AddressingLedger.Discipline) && AddressingStudy.Of(bound) is { } addressing)
            draft.Add(AddressingLedger.Entries(addressing), null, null, () => AddressingAnswers.Of(addressing));
        if (draft.Wants(MoneyLedger.Discipline) && bound.Job.Money is not null && MoneyStudy.Of(bound, MainsHandover.Needs(bound, power)) is { } money)
            draft.Add(MoneyLedger.Entries(money), null, () => MoneyFigures.Of(money), () => MoneyAnswers.Of(money));
    }

    /// <summary>Plays through the mains coming back in one design of a job.</summary>
    /// <param name="job">A job without errors.</param>
    /// <param name="catalogue">The catalogue it names its models from.</param>
    /// <param name="request">What is wanted.</param>
    /// <returns>Who has power when, who stays dark, and when what must go on working works again.</returns>
    /// <exception cref="ArgumentException">The design does not exist or a name is unknown: the job was not checked.</exception>
    public static StandbyResult Outage(Job job, Catalogue catalogue, StudyRequest request)
    {
        var design = DesignOf(job, request.Design) ?? throw new ArgumentException($"'{request.Design}' is no design of this job.", nameof(request));
        var bound = Binder.Bind(job, catalogue, design, request.Counts);
        return StandbyStudy.Of(bound, PowerStudy.Of(bound, MeasuredDrawStudy.Of(bound, request.FirmReadings)));
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

    private static HeatResult HeatOf(BoundDesign bound, PowerResult power)
    {
        var loads = new HeatLoads(power);
        return HeatStudy.Of(bound, new HeatInputs(loads.Of, loads.In));
    }

    private static SwitchLoad LoadOf(PowerResult power, string id)
    {
        var supply = power.Switches.FirstOrDefault(s => s.Switch.Id == id)?.Supply;
        return supply is null ? SwitchLoad.NotKnown : new(supply.TypicalPortWatts, supply.WorstPortWatts);
    }
}
