using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Failure;

/// <summary>What the study of failures can tell; each part is worked out when somebody first asks, for most jobs set no limit.</summary>
/// <param name="bound">The design.</param>
/// <param name="runningWatts">What a switch or midspan gives its ports at the most while all runs, by its id [W]; null when not known.</param>
public sealed class FailureResult(BoundDesign bound, Func<string, double?> runningWatts)
{
    /// <summary>The design.</summary>
    public BoundDesign Bound => bound;

    /// <summary>The effect of every single failure.</summary>
    public IReadOnlyList<FailureEffect> Effects => field ??= [.. new FailureFinder(bound).All()];

    /// <summary>What becomes of each switch and midspan when one of its supplies fails; an injector of one port is left out, it takes its own endpoint only.</summary>
    public IReadOnlyList<SupplyLoss> SupplyLosses => field ??=
    [
        .. bound.Switches.Select(unit => new SupplyLoss(unit.Id, unit.Model.Id, unit.Supply, unit.Model.Ports.Any(group => group.Poe is not null || group.Passive is not null), runningWatts(unit.Id))),
        .. bound.Injectors.Where(unit => unit.Model.Ports > 1).Select(unit => new SupplyLoss(unit.Id, unit.Model.Id, unit.Model.Supply, true, runningWatts(unit.Id))),
    ];

    /// <summary>The parts that endpoints hang on.</summary>
    internal WayParts Ways => field ??= new WayParts(bound);
}
