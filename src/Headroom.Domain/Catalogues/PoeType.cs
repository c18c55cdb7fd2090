namespace Headroom.Domain.Catalogues;

/// <summary>The types of port power of IEEE Std 802.3, clauses 33 and 145.</summary>
public enum PoeType
{
    /// <summary>Type 1 (af): two pairs, up to class 3.</summary>
    Type1,

    /// <summary>Type 2 (at): two pairs, up to class 4.</summary>
    Type2,

    /// <summary>Type 3 (bt): two or four pairs, up to class 6.</summary>
    Type3,

    /// <summary>Type 4 (bt): four pairs, up to class 8.</summary>
    Type4,
}
