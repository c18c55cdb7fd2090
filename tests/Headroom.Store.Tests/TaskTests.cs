using System.Text;

namespace Headroom.Store.Tests;

public sealed class TaskTests
{
    private static readonly TimeSpan Silent = TimeSpan.FromSeconds(30);

    public static TheoryData<string> Kinds => [.. TestStores.Kinds];

    [Theory, MemberData(nameof(Kinds))]
    public void A_task_goes_from_hand_to_result(string kind)
    {
        using var stores = new TestStores(kind);
        var store = stores.Open();
        var job = store.Add("Barn", JobText.Of("x"), new("a", "b"));
        var id = store.Ask(job.Id, 1, ("plan", "{}"), "R. Hollis");
        Assert.Equal((TaskState.Waiting, "plan", "{}", "R. Hollis"), (store.Task(id)!.State, store.Task(id)!.Kind, store.Task(id)!.Asked, store.Task(id)!.By));
        Assert.Equal(id, store.Take("one", Silent)!.Id);
        Assert.Null(store.Take("two", Silent));
        Assert.True(store.Beat(id, "one", "3 of 9"));
        Assert.False(store.Beat(id, "two", "x"));
        Assert.Equal("3 of 9", store.LastTask(job.Id, "plan")!.Told);
        store.End(id, "one", (TaskState.Done, "done"), "result"u8.ToArray());
        Assert.True(store.Task(id)!.IsOver);
        Assert.Equal("result", Encoding.UTF8.GetString(store.Result(id)!));
        Assert.Empty(store.Check());
    }

    [Theory, MemberData(nameof(Kinds))]
    public void A_task_that_is_stopped_is_told_to_stop(string kind)
    {
        using var stores = new TestStores(kind);
        var store = stores.Open();
        var job = store.Add("Barn", JobText.Of("x"), new("a", "b"));
        var (running, waiting) = (store.Ask(job.Id, 1, ("plan", ""), "x"), store.Ask(job.Id, 1, ("plan", ""), "x"));
        store.Take("one", Silent);
        store.Stop(running);
        store.Stop(waiting);
        Assert.False(store.Beat(running, "one", "on"));
        Assert.Equal((TaskState.Stopping, TaskState.Stopped), (store.Task(running)!.State, store.Task(waiting)!.State));
    }

    [Theory, MemberData(nameof(Kinds))]
    public void A_task_whose_process_is_gone_is_taken_by_another(string kind)
    {
        using var stores = new TestStores(kind);
        var clock = new SetClock(new(2026, 11, 25, 8, 0, 0, TimeSpan.Zero));
        var store = stores.Open(clock);
        var job = store.Add("Barn", JobText.Of("x"), new("a", "b"));
        var id = store.Ask(job.Id, 1, ("plan", ""), "x");
        store.Take("one", Silent);
        clock.Now += TimeSpan.FromSeconds(29);
        Assert.Null(store.Take("two", Silent));
        clock.Now += TimeSpan.FromSeconds(2);
        Assert.Equal(id, store.Take("two", Silent)!.Id);
        Assert.False(store.Beat(id, "one", "late"));
    }

    [Theory, MemberData(nameof(Kinds))]
    public async Task Of_many_processes_one_takes_a_task(string kind)
    {
        using var stores = new TestStores(kind);
        var store = stores.Open();
        var job = store.Add("Barn", JobText.Of("x"), new("a", "b"));
        const int tasks = 30;
        for (var task = 0; task < tasks; task++)
            store.Ask(job.Id, 1, ("plan", ""), "x");
        var taken = new System.Collections.Concurrent.ConcurrentBag<long>();
        await System.Threading.Tasks.Task.WhenAll(Enumerable.Range(0, 6).Select(owner => System.Threading.Tasks.Task.Run(() =>
        {
            for (var empty = 0; empty < 20;)
            {
                if (store.Take($"{owner}", Silent) is { } task)
                    taken.Add(task.Id);
                else
                    empty++;
            }
        })));
        Assert.Equal(tasks, taken.Distinct().Count());
        Assert.Equal(tasks, taken.Count);
    }
}
