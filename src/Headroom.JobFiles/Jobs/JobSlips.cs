using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>The slips that only a job can have.</summary>
internal static class JobSlips
{
    public static readonly Slip NameRange = new(20, "A range of names or ports that cannot be counted through from its first to its last.");
    public static readonly Slip OutOfStep = new(21, "Two ranges that go in step and have not the same number of members.");
    public static readonly Slip TooManyByRange = new(22, "Ranges and counts that stand for more things than any job has.");

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Slip> All { get; } = [NameRange, OutOfStep, TooManyByRange];
}
