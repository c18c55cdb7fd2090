namespace Headroom.Domain.Tables;

/// <summary>What the cells of a column are.</summary>
public enum CellSort
{
    /// <summary>Text, which stays text whatever it looks like.</summary>
    Text,

    /// <summary>A number.</summary>
    Number,

    /// <summary>An amount of money.</summary>
    Money,

    /// <summary>A day.</summary>
    Day,
}
