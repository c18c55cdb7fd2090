namespace Headroom.Domain.Tables;

/// <summary>A table of a workbook.</summary>
/// <param name="Name">Its name, of at most 31 letters, also of its sheet.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows, a cell a column: a text, a <see cref="double"/>, a <see cref="decimal"/>, a <see cref="DateOnly"/>, or null for what is not known or not there.</param>
public sealed record BookTable(string Name, IReadOnlyList<BookColumn> Columns, IReadOnlyList<IReadOnlyList<object?>> Rows);
