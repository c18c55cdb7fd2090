namespace Headroom.Store;

/// <summary>One revision of a job.</summary>
/// <param name="Job">The id of the job.</param>
/// <param name="Number">Its number, from 1 without gaps.</param>
/// <param name="At">When it was made, by the clock of whoever made it; the number says the order.</param>
/// <param name="By">Who made it.</param>
/// <param name="What">What changed, in words.</param>
public sealed record JobRevision(string Job, int Number, DateTimeOffset At, string By, string What);
