namespace Headroom.Store;

/// <summary>Long work on a job that runs in the background.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Job">The job.</param>
/// <param name="Revision">The revision it works with.</param>
/// <param name="Kind">What is done: <c>papers</c>, <c>remedies</c>, <c>plan</c>.</param>
/// <param name="Asked">What was asked for, in the manner of its kind.</param>
/// <param name="By">Who asked.</param>
/// <param name="At">When.</param>
/// <param name="State">How far it is.</param>
/// <param name="Told">How far it is in words, or why it failed.</param>
public sealed record StoredTask(long Id, string Job, int Revision, string Kind, string Asked, string By, DateTimeOffset At, TaskState State, string Told)
{
    /// <summary>True when nothing more will come.</summary>
    public bool IsOver => State is TaskState.Done or TaskState.Stopped or TaskState.Failed;
}
