using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>An uplink with a module at each end, and the run between them.</summary>
public sealed record FibreLink
{
    /// <summary>What people call it: the drop, or the port it leaves from.</summary>
    public required string Name { get; init; }

    /// <summary>The uplink.</summary>
    public required Uplink Uplink { get; init; }

    /// <summary>The module at the near end; null when not known.</summary>
    public ModuleModel? Near { get; init; }

    /// <summary>The module at the far end; null when not known.</summary>
    public ModuleModel? Far { get; init; }

    /// <summary>The run; null when not known.</summary>
    public BoundRun? Run { get; init; }

    /// <summary>True for a module on copper, which has a reach but no light.</summary>
    public bool IsCopper { get; init; }

    /// <summary>Length, for copper with its cords [m]; null when not known.</summary>
    public double? Metres { get; init; }

    /// <summary>Half the interval of the length [m].</summary>
    public double SpreadMetres { get; init; }

    /// <summary>The fibre; null when not known, and for copper.</summary>
    public FibreModel? Fibre { get; init; }

    /// <summary>How far both modules reach on it [m]; null when not known.</summary>
    public double? ReachMetres { get; init; }

    /// <summary>Where that comes from.</summary>
    public string ReachOrigin { get; init; } = "not known";

    /// <summary>What the modules leave for cable and connections [dB]; null when not known.</summary>
    public double? MostDecibels { get; init; }

    /// <summary>Where that comes from.</summary>
    public string MostOrigin { get; init; } = "not known";

    /// <summary>Most loss of a kilometre, the worse of both directions [dB/km]; null when not known.</summary>
    public double? DecibelsPerKilometre { get; init; }

    /// <summary>Where that comes from.</summary>
    public string LossOrigin { get; init; } = "not known";

    /// <summary>Mated pairs, one at each end when not written.</summary>
    public int MatedPairs { get; init; } = 2;

    /// <summary>Splices, none when not written.</summary>
    public int Splices { get; init; }

    /// <summary>The most that it can lose [dB]; null when length or fibre is not known.</summary>
    public double? Decibels => Metres is { } metres && DecibelsPerKilometre is { } loss ? FibreLoss.Decibels(metres, loss, MatedPairs, Splices) : null;
}
