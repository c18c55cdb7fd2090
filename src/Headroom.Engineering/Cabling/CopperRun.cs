using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>What was worked out of one copper run; a length that nobody knows is left out of the sums and counted in <see cref="Unknown"/>.</summary>
public sealed record CopperRun
{
    /// <summary>The run in its pieces.</summary>
    public required BoundRun Run { get; init; }

    /// <summary>Pieces of the link, cords not counted.</summary>
    public required int Pieces { get; init; }

    /// <summary>Pieces of the link whose length nobody knows.</summary>
    public required int Unknown { get; init; }

    /// <summary>Length of the link as far as it is known [m].</summary>
    public required double LinkMetres { get; init; }

    /// <summary>The length at 20 °C that loses as much as the known pieces do where they are [m].</summary>
    public required double LinkAtTwentyMetres { get; init; }

    /// <summary>The longest the link may be, its pieces in the same proportions [m]; null when no piece says enough.</summary>
    public required double? LongestLinkMetres { get; init; }

    /// <summary>Half the interval of the link's length [m]; 0 when none was written.</summary>
    public required double SpreadMetres { get; init; }

    /// <summary>A pair of the link out and back at 20 °C [Ω]; null when a length or a conductor is not known.</summary>
    public required double? LinkLoopOhms { get; init; }

    /// <summary>The cords that were written; null when none were.</summary>
    public required CordSums? Cords { get; init; }

    /// <summary>The id of the drop.</summary>
    public string Id => Run.Drop.Id;
}
