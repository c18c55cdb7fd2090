using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Binding;

/// <summary>A stretch of a run that is alike from end to end.</summary>
/// <param name="Name">What people call it: <c>K-17</c>, <c>piece 2 of K-17</c>, <c>cords of K-17</c>.</param>
/// <param name="Metres">Its length [m]; null when not surveyed.</param>
/// <param name="Cable">The name of its cable; null when not known.</param>
/// <param name="SquareMillimetres">Cross-section of one conductor [mm²]; null when not known.</param>
/// <param name="Conductivity">Conductivity as a share of annealed copper [1].</param>
/// <param name="CopperClad">True for copper-clad conductors.</param>
/// <param name="Celsius">Air around it [°C].</param>
/// <param name="Air">Where the temperature comes from.</param>
/// <param name="Cord">True for a cord.</param>
public sealed record BoundPiece(
    string Name,
    double? Metres,
    string? Cable,
    double? SquareMillimetres,
    double Conductivity,
    bool CopperClad,
    double Celsius,
    AirOrigin Air,
    bool Cord)
{
    /// <summary>The piece as surveyed; null for assumed cords.</summary>
    public RunPiece? Written { get; init; }

    /// <summary>The copper cable of the catalogue; null when it is not known or is fibre.</summary>
    public CableModel? Copper { get; init; }

    /// <summary>The fibre cable of the catalogue; null when it is not known or is copper.</summary>
    public FibreModel? Fibre { get; init; }

    /// <summary>The length as written; null when it was not, or was assumed.</summary>
    public Given<Metres>? Length => Written?.Length;

    /// <summary>Half the interval of its length [m]; 0 when none was written.</summary>
    public double SpreadMetres => Length?.PlusMinus ?? 0;

    /// <summary>True when nobody wrote the length and one was taken.</summary>
    public bool IsAssumed => Length is null && Metres is not null;

    /// <summary>Where the length comes from, in words.</summary>
    public string MetresOrigin => IsAssumed ? "assumed, no cord written" : Origins.Of(Length);

    /// <summary>Where the temperature comes from, in words.</summary>
    public string CelsiusOrigin => Air.InWords;

    /// <summary>Resistance of one metre of one conductor at its temperature [Ω/m]; null when the cable is not known.</summary>
    public double? OhmsPerMetre { get; } = SquareMillimetres is { } area ? Conductor.OhmsPerMetre(area, Celsius, Conductivity) : null;

    /// <summary>Resistance of one conductor of it [Ω]; null when length or cable is not known.</summary>
    public double? Ohms => Metres * OhmsPerMetre;
}
