namespace Headroom.Documents.Papers;

/// <summary>A paper as a file.</summary>
/// <param name="Name">The name of the file.</param>
/// <param name="Bytes">What is in it.</param>
/// <param name="Sheets">How many sheets it has; 0 for a file that has none, such as a workbook.</param>
public sealed record WrittenPaper(string Name, ReadOnlyMemory<byte> Bytes, int Sheets);
