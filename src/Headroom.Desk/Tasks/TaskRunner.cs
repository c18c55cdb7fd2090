using Headroom.Desk.Work;
using Headroom.Store;
using Microsoft.Extensions.Hosting;

namespace Headroom.Desk.Tasks;

/// <summary>Does long work one after another, tells how far it is, and stops when somebody wants it. What a process left undone the next one takes up.</summary>
internal sealed class TaskRunner(JobStore store, JobShelf shelf, ModelShelf models) : BackgroundService
{
    private static readonly TimeSpan Silent = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(400);

    private readonly string _owner = Guid.NewGuid().ToString("N");
    private readonly SemaphoreSlim _asked = new(0);
    private readonly IReadOnlyList<IDeskWork> _works = [new PaperWork(store, shelf, models), new RemedyWork(shelf), new PlanWork(shelf), new TurnWork(shelf), new EnquiryWork(shelf)];

    /// <summary>Asks for work.</summary>
    /// <returns>The number of the task.</returns>
    public long Ask(OpenJob open, string kind, WorkAsked asked, string by)
    {
        var task = store.Ask(open.Stored.Id, open.Number, (kind, asked.ToText()), by);
        _asked.Release();
        return task;
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        // What starts the program must not wait for the first look at the store.
        await Task.Yield();
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                if (store.Take(_owner, Silent) is { } task)
                    await Do(task, stoppingToken).ConfigureAwait(false);
                else
                    await _asked.WaitAsync(Rest, stoppingToken).ConfigureAwait(false);
            }
            catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
            {
                return;
            }
            catch (StoreException)
            {
                // A server that is away comes back; whoever looks at a page is told.
                await Task.Delay(Rest, stoppingToken).ConfigureAwait(false);
            }
        }
    }

    private async Task Do(StoredTask task, CancellationToken down)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(down);
        var told = "begun";
        var work = Task.Run(() => Result(task, new WorkPlace(task.By, text => told = text, stop.Token)), CancellationToken.None);
        while (await Task.WhenAny(work, Task.Delay(Beat, CancellationToken.None)).ConfigureAwait(false) != work)
        {
            if (!stop.IsCancellationRequested && !store.Beat(task.Id, _owner, told))
                await stop.CancelAsync().ConfigureAwait(false);
        }

        // Shut down in the middle it is left as it is: the next process takes it up.
        if (down.IsCancellationRequested)
            return;
        var (state, said, result) = await work.ConfigureAwait(false);
        store.End(task.Id, _owner, (state, said), result);
    }

    private (TaskState State, string Said, byte[]? Result) Result(StoredTask task, WorkPlace at)
    {
        try
        {
            if (shelf.Open(task.Job, task.Revision) is not { Sound: not null } open)
                return (TaskState.Failed, "the job does not hold together; mend it, then ask again", null);
            return (TaskState.Done, "done", _works.First(work => work.Kind == task.Kind).Do(open, WorkAsked.Read(task.Asked), at));
        }
        catch (Exception fault) when (fault is OperationCanceledException || (fault is AggregateException all && all.Flatten().InnerExceptions.All(one => one is OperationCanceledException)))
        {
            return (TaskState.Stopped, "stopped", null);
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            return (TaskState.Failed, $"this is a fault of headroom itself, not of the job ({fault.GetType().Name})", null);
        }
    }
}
