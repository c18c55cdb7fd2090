namespace Headroom.Domain.Jobs;

/// <summary>Where an amount goes that lies exactly between two that can be paid.</summary>
public enum TieRule
{
    /// <summary>Away from zero: 2.345 becomes 2.35, and -2.345 becomes -2.35.</summary>
    Away,

    /// <summary>To the even digit: 2.345 becomes 2.34, and 2.355 becomes 2.36.</summary>
    Even,

    /// <summary>Upwards: 2.345 becomes 2.35, and -2.345 becomes -2.34.</summary>
    Up,
}
