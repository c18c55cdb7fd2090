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
using Headroom.Engineering.Readings;
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
        var wanted = request.Only is null ? Disciplines : [.. Disciplines.Where(request.Only.Contains)];
        var bound = Binder.Bind(job, catalogue, design, request.Counts);
        var entries = new List<LedgerEntry>();
        var (figures, answers) = (new List<Func<IEnumerable<Figure>>>(), new List<Func<IEnumerable<Answer>>>());
        var board = new ReadingBoard(job);
        // Later disciplines need what the ports give, so power is worked out even where only they are wanted.
        var power = PowerStudy.Of(bound, MeasuredDrawStudy.Of(bound, request.FirmReadings));
        if (wanted.Contains(PowerLedger.Discipline))
        {
            entries.AddRange(board.Beside(PowerLedger.Entries(power), new PowerExpectations(power)));
            figures.Add(() => PowerFigures.Of(power));
            answers.Add(() => PowerAnswers.Of(power));
        }

        if (wanted.Contains(CablingLedger.Discipline))
        {
            var cabling = CablingStudy.Of(bound, new CableLoads(power).Of);
            entries.AddRange(board.Beside(CablingLedger.Entries(cabling), new CablingExpectations(cabling)));
            figures.Add(() => CablingFigures.Of(cabling));
        }

        var heat = wanted.Contains(HeatLedger.Discipline) || wanted.Contains(AcousticLedger.Discipline) ? HeatOf(bound, power) : null;
        if (heat is not null && wanted.Contains(HeatLedger.Discipline))
        {
            entries.AddRange(board.Beside(HeatLedger.Entries(heat), new HeatExpectations(heat)));
            figures.Add(() => HeatFigures.Of(heat));
            answers.Add(() => HeatAnswers.Of(heat));
        }

        if (heat is not null && wanted.Contains(AcousticLedger.Discipline))
        {
            var sound = AcousticStudy.Of(bound, id => LoadOf(power, id), new InletAir(heat.InletOf, heat.CasesOf));
            entries.AddRange(board.Beside(AcousticLedger.Entries(sound), new AcousticExpectations(sound)));
            figures.Add(() => AcousticFigures.Of(sound));
            answers.Add(() => AcousticAnswers.Of(sound));
        }

        if (wanted.Contains(StandbyLedger.Discipline))
        {
            var standby = StandbyStudy.Of(bound, power);
            entries.AddRange(board.Beside(StandbyLedger.Entries(standby), new StandbyExpectations(standby)));
            figures.Add(() => StandbyFigures.Of(standby));
            answers.Add(() => StandbyAnswers.Of(standby));
        }

        if (wanted.Contains(TrafficLedger.Discipline))
        {
            var traffic = TrafficStudy.Of(bound);
            entries.AddRange(board.Beside(TrafficLedger.Entries(traffic), new TrafficExpectations(traffic)));
            figures.Add(() => TrafficFigureList.Of(traffic));
            answers.Add(() => TrafficAnswers.Of(traffic));
        }

        if (wanted.Contains(FailureLedger.Discipline))
        {
            var failures = FailureStudy.Of(bound);
            entries.AddRange(FailureLedger.Entries(failures));
            figures.Add(() => FailureFigures.Of(failures));
            answers.Add(() => FailureAnswers.Of(failures));
        }

        // Without a fleet there is nothing to say, and its statistics are not even loaded.
        if (job.Fleet.Count > 0 && wanted.Contains(ReliabilityLedger.Discipline))
        {
            var fleet = ReliabilityStudy.Of(bound);
            entries.AddRange(ReliabilityLedger.Entries(fleet));
            figures.Add(() => ReliabilityFigures.Of(fleet));
            answers.Add(() => ReliabilityAnswers.Of(fleet));
        }

        if (wanted.Contains(RackingLedger.Discipline))
        {
            var racking = RackingStudy.Of(bound, id => MainsHandover.MostWatts(power, id));
            entries.AddRange(RackingLedger.Entries(racking));
            answers.Add(() => RackingAnswers.Of(racking));
        }

        if (wanted.Contains(AddressingLedger.Discipline) && AddressingStudy.Of(bound) is { } addressing)
        {
            entries.AddRange(AddressingLedger.Entries(addressing));
            answers.Add(() => AddressingAnswers.Of(addressing));
        }

        if (wanted.Contains(MoneyLedger.Discipline) && job.Money is not null && MoneyStudy.Of(bound, MainsHandover.Needs(bound, power)) is { } money)
        {
            entries.AddRange(MoneyLedger.Entries(money));
            figures.Add(() => MoneyFigures.Of(money));
            answers.Add(() => MoneyAnswers.Of(money));
        }

        return new Ledger(job.Name, design.Id, request.On, wanted, WorstFirst.Sorted(Overrule(entries, job.Overrulings)), Late(figures), Late(answers), board.Loose())
        {
            LooseOverrulings = Loose(job.Overrulings, entries),
        };
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

    private static LateList<T> Late<T>(List<Func<IEnumerable<T>>> of) => new(() => [.. of.SelectMany(make => make())]);

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

    private static List<LedgerEntry> Overrule(List<LedgerEntry> entries, IReadOnlyList<Overruling> overrulings)
    {
        if (overrulings.Count == 0)
            return entries;
        var byEntry = overrulings.GroupBy(o => o.Entry).ToDictionary(group => group.Key, group => group.Last());
        return entries.ConvertAll(entry => byEntry.TryGetValue(entry.Id, out var overruling) ? entry with { Overruled = overruling } : entry);
    }

    private static List<Overruling> Loose(IReadOnlyList<Overruling> overrulings, List<LedgerEntry> entries)
    {
        if (overrulings.Count == 0)
            return [];
        var known = entries.Select(entry => entry.Id).ToHashSet();
        return [.. overrulings.Where(overruling => !known.Contains(overruling.Entry))];
    }
}
