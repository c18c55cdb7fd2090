using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Cables that are tied together, and how warm they make one another: guidance and an estimate, no standard's limit.</summary>
public sealed record CableBundle
{
    /// <summary>What people call it: the pathway, or the drops in it.</summary>
    public required string Name { get; init; }

    /// <summary>How many cables it holds, as surveyed.</summary>
    public required int Cables { get; init; }

    /// <summary>Where the number was written.</summary>
    public required string CablesOrigin { get; init; }

    /// <summary>The drops of the survey that lie in it.</summary>
    public required IReadOnlyList<string> Drops { get; init; }

    /// <summary>The piece around which the air is warmest.</summary>
    public required BoundPiece Warmest { get; init; }

    /// <summary>The piece that makes most heat, as far as known; null when none is known to carry current.</summary>
    public BoundPiece? Hottest { get; init; }

    /// <summary>What that piece carries; null likewise.</summary>
    public CableLoad? Load { get; init; }

    /// <summary>Heat of a metre of it with copper at 20 °C [W/m]; null likewise.</summary>
    public double? WattsPerMetre { get; init; }

    /// <summary>The least of what its jackets bear [°C].</summary>
    public required double JacketCelsius { get; init; }

    /// <summary>True when a jacket's temperature was not in the catalogue and the common one was taken.</summary>
    public required bool JacketAssumed { get; init; }

    /// <summary>Estimated rise with every cable as warm as the hottest [K]; null when nothing is known of currents, or when the estimate runs away.</summary>
    public double? RiseKelvins => WattsPerMetre is { } heat ? BundleHeat.RiseKelvins(heat, Cables, Warmest.Celsius) : null;

    /// <summary>Most rise: the guidance, or what the jacket leaves above the air [K].</summary>
    public double MostKelvins => Math.Min(BundleHeat.TargetKelvins, JacketCelsius - Warmest.Celsius);

    /// <summary>Most current in a conductor by the table of the electrical code [A]; null when the table is not to be asked or has none.</summary>
    public double? MostAmperes => AsksCode ? BundleAmpacity.MostAmperes(Conductor.Awg(Hottest!.SquareMillimetres!.Value), Cables, JacketCelsius) : null;

    /// <summary>True when the table of the electrical code is to be asked.</summary>
    public bool AsksCode => Load is { } load && BundleAmpacity.Applies(load.Watts, load.ConductorAmperes, Conductor.Awg(Hottest!.SquareMillimetres!.Value));
}
