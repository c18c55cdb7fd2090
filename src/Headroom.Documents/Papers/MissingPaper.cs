namespace Headroom.Documents.Papers;

/// <summary>A paper that was not written.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Why">Why not.</param>
public sealed record MissingPaper(string Id, string Why);
