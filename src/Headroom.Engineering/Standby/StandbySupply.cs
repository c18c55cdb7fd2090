using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Standby;

/// <summary>One standby supply with all that was worked out of it.</summary>
public sealed record StandbySupply
{
    /// <summary>The supply as the design has it.</summary>
    public required PlacedStandby Placed { get; init; }

    /// <summary>Its model.</summary>
    public required StandbyModel Model { get; init; }

    /// <summary>The block in it; null when not known.</summary>
    public BatteryModel? Battery { get; init; }

    /// <summary>What hangs on it.</summary>
    internal FedUnits Units { get; init; } = null!;

    /// <summary>Each thing on it with what it takes at its most.</summary>
    public required IReadOnlyList<FedUnit> Fed { get; init; }

    /// <summary>How long it must hold; null when nobody says.</summary>
    public Given<Seconds>? Wanted { get; init; }

    /// <summary>The state of those that last in which most is taken.</summary>
    public PowerState State { get; init; }

    /// <summary>What is taken from its output, stage by stage; empty when something is not known.</summary>
    public IReadOnlyList<LoadStage> Stages { get; init; } = [];

    /// <summary>What is known of its battery; null when too little.</summary>
    public BatteryTable? Table { get; init; }

    /// <summary>The air where it stands.</summary>
    public required BatteryPlace Place { get; init; }

    /// <summary>True when something that must go on working hangs on a port of low priority.</summary>
    public bool KeepsLow { get; init; }

    /// <summary>The life of its battery where it stands [years]; null when not known.</summary>
    public double? LifeYears { get; init; }

    /// <summary>The age of its battery [years]; null when not known.</summary>
    public double? AgeYears => Placed.BatteryAge?.Value.Value / StandbyStudy.SecondsPerYear;

    /// <summary>True when its battery is older than it lives there.</summary>
    public bool PastLife => AgeYears > LifeYears;

    /// <summary>How long it holds: new, by its age now, aged, aged and cold, the last carrying the verdict; empty when something is not known.</summary>
    public IReadOnlyList<RuntimeCase> Cases { get; init; } = [];

    /// <summary>The case that carries the verdict; null when something is not known.</summary>
    public RuntimeCase? Governing => Cases.Count == 0 ? null : Cases[^1];

    /// <summary>What its converter loses of the battery's watts: efficiency [1]; 1 where the table is of its output.</summary>
    public double Efficiency => Table is { AtOutput: true } ? 1 : Model.Efficiency?.Value.Value ?? double.NaN;

    /// <summary>What is to be found out before minutes can be told; null when nothing.</summary>
    public string? Question { get; init; }

    /// <summary>The load on the table for a load at the output.</summary>
    /// <param name="outputWatts">Load at the output [W]; 0 or more.</param>
    /// <param name="derating">Factor of age and cold [1]; above 0.</param>
    /// <returns>Watts of what the table is of [W].</returns>
    public double TableWatts(double outputWatts, double derating) => derating * (Table is { AtOutput: true }
        ? outputWatts
        : ConverterLoad.BatteryWatts(outputWatts, Efficiency, Model.NoLoad?.Value.Value ?? 0));

    /// <summary>The stages as the table sees them.</summary>
    /// <param name="derating">Factor of age and cold [1]; above 0.</param>
    /// <param name="times">All loads at the output times this [1]; 1 as they are.</param>
    /// <returns>The stages.</returns>
    public LoadStage[] OnTable(double derating, double times = 1)
    {
        var stages = new LoadStage[Stages.Count];
        for (var i = 0; i < stages.Length; i++)
            stages[i] = new(Stages[i].FromSeconds, TableWatts(Stages[i].Watts * times, derating));
        return stages;
    }
}
