using Headroom.Domain.Jobs;
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
using Headroom.Engineering.Standby;
using Headroom.Engineering.Traffic;

namespace Headroom.Engineering;

/// <summary>What every discipline makes of one design, each worked out when it is first asked for; here, and nowhere else, one hands its figures on to another.</summary>
public sealed class DesignResults
{
    private readonly IReadOnlyList<FirmReading> _firm;
    private readonly DrawMemory? _memory;

    /// <summary>Prepares the results of a design.</summary>
    /// <param name="bound">The design.</param>
    /// <param name="firm">What the firm measured at other sites; empty when nothing is known of it.</param>
    /// <param name="memory">Keeps what readings come to from one study to the next; null to work it out.</param>
    internal DesignResults(BoundDesign bound, IReadOnlyList<FirmReading> firm, DrawMemory? memory = null) => (Bound, _firm, _memory) = (bound, firm, memory);

    /// <summary>The design with every name turned into what it names.</summary>
    public BoundDesign Bound { get; }

    /// <summary>Watts, volts and amperes.</summary>
    public PowerResult Power => field ??= PowerStudy.Of(Bound, MeasuredDrawStudy.Of(Bound, _firm, _memory));

    /// <summary>The cables.</summary>
    public CablingResult Cabling => field ??= CablingStudy.Of(Bound, new CableLoads(Power).Of);

    /// <summary>Heat and air.</summary>
    public HeatResult Heat
    {
        get
        {
            if (field is null)
            {
                var loads = new HeatLoads(Power);
                field = HeatStudy.Of(Bound, new HeatInputs(loads.Of, loads.In));
            }

            return field;
        }
    }

    /// <summary>Sound at every ear.</summary>
    public AcousticResult Sound => field ??= AcousticStudy.Of(Bound, LoadOf, new InletAir(Heat.InletOf, Heat.CasesOf));

    /// <summary>What goes on through an outage, and what happens when it ends.</summary>
    public StandbyResult Standby => field ??= StandbyStudy.Of(Bound, Power);

    /// <summary>What the lines carry.</summary>
    public TrafficResult Traffic => field ??= TrafficStudy.Of(Bound);

    /// <summary>What goes dark when something fails.</summary>
    public FailureResult Failures => field ??= FailureStudy.Of(Bound, RunningWatts);

    /// <summary>What stands in the racks.</summary>
    public RackingResult Racking => field ??= RackingStudy.Of(Bound, id => MainsHandover.MostWatts(Power, id));

    /// <summary>The addresses; null when the survey has no plan of them.</summary>
    public AddressingResult? Addressing => field ??= AddressingStudy.Of(Bound);

    /// <summary>Money; null when the job is not about money.</summary>
    public MoneyResult? Money => field ??= Bound.Job.Money is null ? null : MoneyStudy.Of(Bound, MainsHandover.Needs(Bound, Power));

    // What a switch sets aside, or a midspan gives, at the most while all runs; a supply that fails starts nothing anew.
    private double? RunningWatts(string id)
    {
        if (Power.Injectors.FirstOrDefault(one => one.Injector.Id == id) is { } injector)
            return injector.Known == injector.Asking.Count ? injector.DemandWatts : null;
        var running = Power.Switches.FirstOrDefault(s => s.Switch.Id == id)?.States.Where(state => state.State != PowerState.Start).ToList();
        return running is null || running.Exists(state => !state.Whole) ? null : running.Max(state => state.DemandWatts);
    }

    private SwitchLoad LoadOf(string id)
    {
        var supply = Power.Switches.FirstOrDefault(s => s.Switch.Id == id)?.Supply;
        return supply is null ? SwitchLoad.NotKnown : new(supply.TypicalPortWatts, supply.WorstPortWatts);
    }
}
