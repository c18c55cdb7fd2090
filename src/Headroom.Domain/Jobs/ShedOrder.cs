namespace Headroom.Domain.Jobs;

/// <summary>Which port of the lowest priority loses its watts first.</summary>
public enum ShedOrder
{
    /// <summary>The one with the highest number.</summary>
    HighestPortFirst,

    /// <summary>The one with the lowest number.</summary>
    LowestPortFirst,
}
