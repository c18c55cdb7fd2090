namespace Headroom.Engineering.Remedies;

/// <summary>How far the study of a remedy can be trusted.</summary>
public enum Certainty
{
    /// <summary>It follows from what is written and declared.</summary>
    Sure,

    /// <summary>It leans on something that was assumed, or lies within the interval of the sum.</summary>
    Fair,

    /// <summary>It leans on something that only a look on site can tell.</summary>
    Rough,
}
