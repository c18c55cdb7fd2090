namespace Headroom.Domain.Findings;

/// <summary>A place in a file, for a finding or for the origin of a value.</summary>
/// <param name="File">The file as the person named it; empty when the value is in no file.</param>
/// <param name="Line">The line, from 1; 0 for the file as a whole.</param>
/// <param name="Column">The column, from 1; 0 for the line as a whole.</param>
public sealed record Place(string File, int Line, int Column)
{
    /// <summary>No place: the value was made, not read.</summary>
    public static Place None { get; } = new("", 0, 0);

    /// <inheritdoc/>
    public override string ToString() => Line == 0 ? File : $"{File}:{Line}:{Column}";
}
