namespace Headroom.Domain.Tables;

/// <summary>A column of a table.</summary>
/// <param name="Name">What heads it, without its unit.</param>
/// <param name="Sort">What its cells are.</param>
/// <param name="Unit">The unit of its numbers; null for none.</param>
public sealed record BookColumn(string Name, CellSort Sort = CellSort.Text, string? Unit = null)
{
    /// <summary>What heads it, with its unit: <c>length [m]</c>.</summary>
    public string Heading => Unit is null ? Name : $"{Name} [{Unit}]";
}
