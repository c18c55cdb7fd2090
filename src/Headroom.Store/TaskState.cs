namespace Headroom.Store;

/// <summary>How far background work is.</summary>
public enum TaskState
{
    /// <summary>Nobody has begun it.</summary>
    Waiting,

    /// <summary>Some process is at it.</summary>
    Running,

    /// <summary>Somebody wants it stopped.</summary>
    Stopping,

    /// <summary>It has a result.</summary>
    Done,

    /// <summary>It was stopped.</summary>
    Stopped,

    /// <summary>It came to no result, and it is told why.</summary>
    Failed,
}
