using System.Data.Common;
using System.Globalization;
using Headroom.Store.Databases;

namespace Headroom.Store;

/// <summary>Work in the background. Several processes may share one queue; a task is taken by one of them.</summary>
public sealed partial class JobStore
{
    private const string TaskColumns = "id, job, number, kind, asked, made_by, at, state, told";

    /// <summary>Puts work into the queue.</summary>
    /// <param name="id">The job.</param>
    /// <param name="number">The revision to work with.</param>
    /// <param name="what">The kind, and what is asked for.</param>
    /// <param name="by">Who asks.</param>
    /// <returns>The number of the task.</returns>
    public long Ask(string id, int number, (string Kind, string Asked) what, string by) => Asked(connection =>
        new Sql(connection, null, "insert into task (job, number, kind, asked, made_by, at, state, told) values (@job, @number, @kind, @asked, @by, @at, @state, '') returning id")
            .With("job", id).With("number", (long)number).With("kind", what.Kind).With("asked", what.Asked).With("by", by).With("at", Now()).With("state", Word(TaskState.Waiting)).Number());

    /// <summary>A task; null when there is none of that number.</summary>
    /// <param name="task">Its number.</param>
    public StoredTask? Task(long task) => Asked(connection => new Sql(connection, null, $"select {TaskColumns} from task where id = @id").With("id", task).Rows(Task)).FirstOrDefault();

    /// <summary>The last task of a kind that was asked for a job; null when there is none.</summary>
    /// <param name="id">The job.</param>
    /// <param name="kind">The kind.</param>
    public StoredTask? LastTask(string id, string kind) => Asked(connection =>
        new Sql(connection, null, $"select {TaskColumns} from task where job = @job and kind = @kind order by id desc limit 1").With("job", id).With("kind", kind).Rows(Task)).FirstOrDefault();

    /// <summary>Takes the task that has waited longest, or one whose process has not been heard of for a while.</summary>
    /// <param name="owner">Who takes it: unlike every other process.</param>
    /// <param name="silent">After how long a process is taken for gone.</param>
    /// <returns>The task; null when there is none, or another was quicker.</returns>
    public StoredTask? Take(string owner, TimeSpan silent) => Asked(connection =>
    {
        var late = Stamp(_clock.GetUtcNow() - silent);
        var found = new Sql(connection, null, $"select {TaskColumns} from task where state = @waiting or (state in (@running, @stopping) and beat < @late) order by id limit 1")
            .With("waiting", Word(TaskState.Waiting)).With("running", Word(TaskState.Running)).With("stopping", Word(TaskState.Stopping)).With("late", late).Rows(Task);
        if (found is not [var task])
            return null;
        var next = task.State == TaskState.Stopping ? TaskState.Stopped : TaskState.Running;
        var taken = new Sql(connection, null, "update task set state = @next, owner = @owner, beat = @now where id = @id and state = @was and (beat is null or beat < @late)")
            .With("next", Word(next)).With("owner", owner).With("now", Now()).With("id", task.Id).With("was", Word(task.State)).With("late", late).Run();
        return taken == 1 && next == TaskState.Running ? task with { State = next } : null;
    });

    /// <summary>Says how far a task is, and that its process is there.</summary>
    /// <param name="task">Its number.</param>
    /// <param name="owner">Who does it.</param>
    /// <param name="told">How far it is, in words.</param>
    /// <returns>True when it is to go on; false when somebody wants it stopped, or another process has taken it.</returns>
    public bool Beat(long task, string owner, string told) => Asked(connection =>
        new Sql(connection, null, "update task set told = @told, beat = @now where id = @id and owner = @owner and state = @running")
            .With("told", told).With("now", Now()).With("id", task).With("owner", owner).With("running", Word(TaskState.Running)).Run() == 1);

    /// <summary>Ends a task.</summary>
    /// <param name="task">Its number.</param>
    /// <param name="owner">Who does it.</param>
    /// <param name="end">How it ended, and in words.</param>
    /// <param name="result">What it came to; null for nothing.</param>
    public void End(long task, string owner, (TaskState State, string Told) end, ReadOnlyMemory<byte>? result) => Asked(connection =>
    {
        using var within = connection.BeginTransaction();
        new Sql(connection, within, "update task set state = @state, told = @told, hash = @hash where id = @id and owner = @owner")
            .With("state", Word(end.State)).With("told", end.Told).With("hash", result is { } bytes ? Content(connection, within, bytes) : null).With("id", task).With("owner", owner).Run();
        within.Commit();
        return true;
    });

    /// <summary>Asks for a task to be stopped; one that nobody has begun is stopped at once.</summary>
    /// <param name="task">Its number.</param>
    public void Stop(long task) => Asked(connection =>
        new Sql(connection, null, "update task set state = case when state = @waiting then @stopped else @stopping end where id = @id and state in (@waiting, @running)")
            .With("waiting", Word(TaskState.Waiting)).With("stopped", Word(TaskState.Stopped)).With("stopping", Word(TaskState.Stopping)).With("running", Word(TaskState.Running)).With("id", task).Run());

    /// <summary>What a task came to; null when there is nothing yet.</summary>
    /// <param name="task">Its number.</param>
    public byte[]? Result(long task) => Asked(connection =>
        new Sql(connection, null, "select c.bytes from task t join content c on c.hash = t.hash where t.id = @id").With("id", task).Rows(row => (byte[])row[0])).FirstOrDefault();

    private static string Word(TaskState state) => state.ToString().ToLowerInvariant();

    private static string Stamp(DateTimeOffset at) => at.ToString(TimeFormat, CultureInfo.InvariantCulture);

    private static StoredTask Task(DbDataReader row) => new(
        row.GetInt64(0), row.GetString(1), (int)row.GetInt64(2), row.GetString(3), row.GetString(4), row.GetString(5), Time(row.GetString(6)), Enum.Parse<TaskState>(row.GetString(7), ignoreCase: true), row.GetString(8));
}
