namespace Headroom.Engineering.Cabling;

/// <summary>Which rule bounds the cords of a run.</summary>
public enum CordBound
{
    /// <summary>The loss of the whole channel.</summary>
    Channel,

    /// <summary>15 m of thin cords in all.</summary>
    Thin,

    /// <summary>22 m at the outlet end.</summary>
    OutletEnd,
}
