namespace Headroom.Engineering.Heat;

/// <summary>How a sheet-steel enclosure stands: which of its faces give off heat.</summary>
public enum BoxPosition
{
    /// <summary>Free on all sides.</summary>
    Free,

    /// <summary>Its back to a wall.</summary>
    BackToWall,

    /// <summary>At the end of a row, free behind.</summary>
    EndOfRow,

    /// <summary>At the end of a row, its back to a wall.</summary>
    EndOfRowBackToWall,

    /// <summary>In the middle of a row, free behind.</summary>
    MiddleOfRow,

    /// <summary>In the middle of a row, its back to a wall.</summary>
    MiddleOfRowBackToWall,

    /// <summary>The same, its top covered as well.</summary>
    MiddleOfRowCovered,
}
