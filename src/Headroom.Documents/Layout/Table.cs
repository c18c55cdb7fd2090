namespace Headroom.Documents.Layout;

/// <summary>A table; its head stands on every sheet that it reaches, and no row is split.</summary>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows.</param>
public sealed record Table(IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows) : Block;
