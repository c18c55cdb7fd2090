namespace Headroom.Engineering.Record;

/// <summary>A file that the folder does not hold.</summary>
/// <param name="File">Its name.</param>
/// <param name="Means">What cannot be told without it.</param>
public sealed record MissingPart(string File, string Means);
