namespace Headroom.Engineering.Acoustics;

/// <summary>Absorption coefficients of surfaces, octaves 125 to 4000 Hz: typical handbook values, ± 30 %.</summary>
public static class SurfaceTable
{
    /// <summary>How many octaves they have.</summary>
    public const int Bands = 6;

    /// <summary>Concrete, sealed; hard tile.</summary>
    public static ReadOnlySpan<double> Concrete => [0.01, 0.01, 0.02, 0.02, 0.02, 0.02];

    /// <summary>Vinyl or linoleum on concrete.</summary>
    public static ReadOnlySpan<double> Vinyl => [0.02, 0.03, 0.03, 0.03, 0.03, 0.02];

    /// <summary>Parquet on concrete.</summary>
    public static ReadOnlySpan<double> Parquet => [0.04, 0.04, 0.07, 0.06, 0.06, 0.07];

    /// <summary>Heavy carpet on concrete.</summary>
    public static ReadOnlySpan<double> Carpet => [0.02, 0.06, 0.14, 0.37, 0.60, 0.65];

    /// <summary>Carpet on foam or felt.</summary>
    public static ReadOnlySpan<double> CarpetOnFelt => [0.08, 0.24, 0.57, 0.69, 0.71, 0.73];

    /// <summary>Brick, painted.</summary>
    public static ReadOnlySpan<double> Brick => [0.01, 0.01, 0.02, 0.02, 0.02, 0.03];

    /// <summary>Plasterboard of 12 mm on studs.</summary>
    public static ReadOnlySpan<double> Plasterboard => [0.29, 0.10, 0.06, 0.05, 0.04, 0.04];

    /// <summary>Window glass.</summary>
    public static ReadOnlySpan<double> Window => [0.35, 0.25, 0.18, 0.12, 0.07, 0.04];

    /// <summary>Plate glass in a large pane.</summary>
    public static ReadOnlySpan<double> PlateGlass => [0.18, 0.06, 0.04, 0.03, 0.02, 0.02];

    /// <summary>A door of solid wood.</summary>
    public static ReadOnlySpan<double> Door => [0.10, 0.07, 0.05, 0.04, 0.04, 0.04];

    /// <summary>Ceiling tile of wood fibre.</summary>
    public static ReadOnlySpan<double> CeilingTile => [0.15, 0.40, 0.70, 0.80, 0.80, 0.80];

    /// <summary>Heavy curtain, half draped.</summary>
    public static ReadOnlySpan<double> Curtain => [0.14, 0.35, 0.55, 0.72, 0.70, 0.65];

    /// <summary>A seated person in an office chair, m² a person: common practice, no source.</summary>
    public static ReadOnlySpan<double> Person => [0.15, 0.25, 0.40, 0.45, 0.45, 0.40];
}
