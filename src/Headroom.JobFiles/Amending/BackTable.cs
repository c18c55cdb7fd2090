namespace Headroom.JobFiles.Amending;

/// <summary>An edited table as cells.</summary>
/// <param name="Name">The name of the table it was.</param>
/// <param name="Header">The cells that name the columns.</param>
/// <param name="Rows">The rows in which anything stands.</param>
internal sealed record BackTable(string Name, IReadOnlyList<BackCell> Header, IReadOnlyList<IReadOnlyList<BackCell>> Rows);
