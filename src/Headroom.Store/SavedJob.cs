namespace Headroom.Store;

/// <summary>What became of a change that was to be saved.</summary>
/// <param name="Revision">The new revision; null when nothing was saved.</param>
/// <param name="Head">The number of the last revision there is now.</param>
public sealed record SavedJob(JobRevision? Revision, int Head)
{
    /// <summary>True when it is in the store.</summary>
    public bool Ok => Revision is not null;
}
