using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Binding;

/// <summary>A stretch of a run that is alike from end to end.</summary>
/// <param name="Name">What people call it: <c>K-17</c>, <c>piece 2 of K-17</c>, <c>cords of K-17</c>.</param>
/// <param name="Make">What it is made of.</param>
/// <param name="Celsius">Air around it [°C].</param>
/// <param name="Air">Where the temperature comes from.</param>
public sealed record BoundPiece(string Name, PieceMake Make, double Celsius, AirOrigin Air)
{
    // Two of them for every endpoint: not-a-number stands for "not known" inside, in half the room.
    private readonly double _metres = double.NaN;
    private readonly double _ohmsPerMetre = Make.SquareMillimetres is { } area ? Conductor.OhmsPerMetre(area, Celsius, Make.Conductivity) : double.NaN;

    /// <summary>The piece as surveyed; null for assumed cords.</summary>
    public RunPiece? Written { get; init; }

    /// <summary>Its length [m]; null when not surveyed.</summary>
    public double? Metres { get => Known(_metres); init => _metres = value ?? double.NaN; }

    /// <summary>The name of its cable; null when not known.</summary>
    public string? Cable => Make.Cable;

    /// <summary>Cross-section of one conductor [mm²]; null when not known.</summary>
    public double? SquareMillimetres => Make.SquareMillimetres;

    /// <summary>Conductivity as a share of annealed copper [1].</summary>
    public double Conductivity => Make.Conductivity;

    /// <summary>True for copper-clad conductors.</summary>
    public bool CopperClad => Make.CopperClad;

    /// <summary>True for a cord.</summary>
    public bool Cord => Make.Cord;

    /// <summary>The copper cable of the catalogue; null when it is not known or is fibre.</summary>
    public CableModel? Copper => Make.Copper;

    /// <summary>The fibre cable of the catalogue; null when it is not known or is copper.</summary>
    public FibreModel? Fibre => Make.Fibre;

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
    public double? OhmsPerMetre => Known(_ohmsPerMetre);

    /// <summary>Resistance of one conductor of it [Ω]; null when length or cable is not known.</summary>
    public double? Ohms => Known(_metres * _ohmsPerMetre);

    private static double? Known(double value) => double.IsNaN(value) ? null : value;
}
