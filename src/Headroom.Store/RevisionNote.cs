namespace Headroom.Store;

/// <summary>What is written beside a revision.</summary>
/// <param name="By">Who made it.</param>
/// <param name="What">What changed, in words.</param>
public sealed record RevisionNote(string By, string What);
