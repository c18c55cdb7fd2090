namespace Headroom.JobFiles.Sheets;

/// <summary>How the cells of a column are read.</summary>
internal enum CellKind
{
    /// <summary>A name, or a range of names.</summary>
    Name,

    /// <summary>Words, kept as they are.</summary>
    Text,

    /// <summary>A number with its unit.</summary>
    Quantity,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>A day.</summary>
    Day,

    /// <summary>The number of a port, or a unit with it.</summary>
    Port,

    /// <summary>A hardware address.</summary>
    Hardware,

    /// <summary>An amount of money.</summary>
    Money,

    /// <summary>A value whose quantity another column tells.</summary>
    Measured,

    /// <summary>The unit of the numbers in another column.</summary>
    Unit,

    /// <summary>A column that people keep and nothing here uses.</summary>
    Aside,
}
