namespace Headroom.Documents.Labels;

/// <summary>Labels as a file.</summary>
/// <param name="Bytes">What is in it; null when a label does not fit, or there is none.</param>
/// <param name="Labels">How many labels.</param>
/// <param name="Sheets">How many sheets, or pieces of strip.</param>
/// <param name="Misfits">The names that do not fit, or leave no room for the code that was asked for.</param>
public sealed record WrittenLabels(ReadOnlyMemory<byte>? Bytes, int Labels, int Sheets, IReadOnlyList<string> Misfits)
{
    /// <summary>The names whose labels have no code, since they hold letters that readers of codes guess at.</summary>
    public IReadOnlyList<string> WithoutCode { get; init; } = [];
}
