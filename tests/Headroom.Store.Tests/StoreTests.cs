using System.Text;

namespace Headroom.Store.Tests;

public sealed class StoreTests
{
    private static readonly RevisionNote Note = new("R. Hollis", "first");

    public static TheoryData<string> Kinds => [.. TestStores.Kinds];

    [Theory, MemberData(nameof(Kinds))]
    public void A_job_comes_out_as_it_went_in(string kind)
    {
        using var stores = new TestStores(kind);
        var text = new JobText(Encoding.UTF8.GetBytes("\uFEFF# remark\r\nheadroom: 1\r\njob: Barn  # with a remark\r\n"), Files(("drops.csv", "a;b\r\n1,5;2"), ("sub/patch.csv", "\uFEFFx")));
        var id = stores.Open().Add("Cobnut Barn", text, Note).Id;
        Assert.Equal("cobnut-barn", id);
        Assert.True(stores.Open().Read(id)!.SameAs(text));
    }

    // Any bytes at all: that they are a job file is nobody's business here.
    [Theory, MemberData(nameof(Kinds))]
    public void Whatever_bytes_go_in_come_out(string kind)
    {
        using var stores = new TestStores(kind);
        var store = stores.Open();
        string[] names = ["drops.csv", "a/b.csv", "ä ö.csv", "x"];
        var files = Gen.Byte.Array[0, 90].Array[0, names.Length].Select(all => all.Select((bytes, at) => (names[at], bytes)).ToDictionary(file => file.Item1, file => (ReadOnlyMemory<byte>)file.bytes));
        Gen.Select(Gen.Byte.Array[0, 400], files, (bytes, beside) => new JobText(bytes, beside)).Sample(
            text => Assert.True(store.Read(store.Add("x", text, Note).Id)!.SameAs(text)),
            iter: Long.Samples(600),
            threads: 1);
        Assert.Empty(store.Check());
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Every_revision_stays_with_who_when_and_what(string kind)
    {
        using var stores = new TestStores(kind);
        var clock = new SetClock(new(2026, 11, 25, 8, 0, 0, TimeSpan.Zero));
        var store = stores.Open(clock);
        var job = store.Add("Barn", JobText.Of("one"), Note);
        clock.Now += TimeSpan.FromHours(1);
        Assert.True(store.Save(job.Id, 1, ("Old Barn", JobText.Of("two")), new("J. Marsh", "length of K-01: 14 m, was 12 m")).Ok);
        Assert.Equal(
            [new(job.Id, 2, clock.Now, "J. Marsh", "length of K-01: 14 m, was 12 m"), new(job.Id, 1, clock.Now - TimeSpan.FromHours(1), "R. Hollis", "first")],
            store.Revisions(job.Id));
        Assert.Equal(["one", "two", "two"], [store.Read(job.Id, 1)!.Text, store.Read(job.Id, 2)!.Text, store.Read(job.Id)!.Text]);
        Assert.Equal(new StoredJob(job.Id, "Old Barn", 2, clock.Now, "J. Marsh"), store.Find(job.Id));
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Of_two_who_change_the_same_revision_the_second_is_told(string kind)
    {
        using var stores = new TestStores(kind);
        var store = stores.Open();
        var job = store.Add("Barn", JobText.Of("one"), Note);
        Assert.Equal(2, store.Save(job.Id, 1, ("Barn", JobText.Of("mine")), Note).Revision!.Number);
        Assert.Equal(new SavedJob(null, 2), stores.Open().Save(job.Id, 1, ("Barn", JobText.Of("theirs")), Note));
        Assert.Equal("mine", store.Read(job.Id)!.Text);
        Assert.Equal(new SavedJob(null, 0), store.Save("no-such", 1, ("x", JobText.Of("x")), Note));
    }

    [Theory, MemberData(nameof(Kinds))]
    public async Task Many_at_once_each_get_a_revision_of_their_own(string kind)
    {
        using var stores = new TestStores(kind);
        var store = stores.Open();
        var job = store.Add("Barn", JobText.Of("0"), Note);
        const int writers = 8, each = 10;
        await Task.WhenAll(Enumerable.Range(0, writers).Select(writer => Task.Run(() =>
        {
            for (var saved = 0; saved < each;)
            {
                var head = store.Find(job.Id)!.Head;
                if (store.Save(job.Id, head, ("Barn", JobText.Of($"{store.Read(job.Id, head)!.Text}\n{writer}")), Note).Ok)
                    saved++;
            }
        })));
        Assert.Equal(1 + writers * each, store.Find(job.Id)!.Head);
        Assert.Equal(1 + writers * each, store.Read(job.Id)!.Text.Split('\n').Length);
        Assert.Empty(store.Check());
    }

    [Theory, MemberData(nameof(Kinds))]
    public void A_clock_that_jumps_back_does_not_change_the_order(string kind)
    {
        using var stores = new TestStores(kind);
        var clock = new SetClock(new(2026, 11, 25, 8, 0, 0, TimeSpan.Zero));
        var store = stores.Open(clock);
        var job = store.Add("Barn", JobText.Of("one"), Note);
        clock.Now -= TimeSpan.FromDays(400);
        store.Save(job.Id, 1, ("Barn", JobText.Of("two")), Note);
        Assert.Equal([2, 1], store.Revisions(job.Id).Select(revision => revision.Number));
        Assert.Equal("two", store.Read(job.Id)!.Text);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void What_a_revision_was_worked_with_is_kept_once_and_never_made_anew(string kind)
    {
        using var stores = new TestStores(kind);
        var store = stores.Open();
        var job = store.Add("Barn", JobText.Of("one"), Note);
        store.Keep(job.Id, 1, [new("models", "old"u8.ToArray()), new("ledger/today", "361 W"u8.ToArray())]);
        store.Keep(job.Id, 1, [new("models", "new"u8.ToArray())]);
        Assert.Equal("old", Encoding.UTF8.GetString(store.Kept(job.Id, 1, "models")!.Bytes.Span));
        Assert.Equal("361 W", Encoding.UTF8.GetString(store.Kept(job.Id, 1, "ledger/today")!.Bytes.Span));
        Assert.Null(store.Kept(job.Id, 1, "rates"));
    }

    [Theory, MemberData(nameof(Kinds))]
    public void A_paper_that_went_out_stays_as_it_was(string kind)
    {
        using var stores = new TestStores(kind);
        var store = stores.Open();
        var job = store.Add("Barn", JobText.Of("one"), Note);
        store.Issue(job.Id, 1, [new("as-quoted", "limits.pdf", "Limits", "%PDF a"u8.ToArray())], "R. Hollis");
        store.Issue(job.Id, 1, [new("as-quoted", "limits.pdf", "Limits", "%PDF b"u8.ToArray())], "J. Marsh");
        var papers = store.Papers(job.Id);
        Assert.Equal(["J. Marsh", "R. Hollis"], papers.Select(paper => paper.By));
        Assert.Equal("%PDF a", Encoding.ASCII.GetString(store.Paper(job.Id, papers[1].Id)!.Value.Bytes));
        Assert.Equal(6, papers[1].Size);
        Assert.Null(store.Paper("other", papers[1].Id));
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Jobs_of_the_same_name_get_ids_of_their_own(string kind)
    {
        using var stores = new TestStores(kind);
        var store = stores.Open();
        Assert.Equal(["barn", "barn-2", "barn-3", "job"], ((string[])["Barn", "barn!", "BARN", "???"]).Select(name => store.Add(name, JobText.Of("x"), Note).Id));
        Assert.Equal(4, store.Jobs().Count);
    }

    private static Dictionary<string, ReadOnlyMemory<byte>> Files(params (string Name, string Text)[] files) =>
        files.ToDictionary(file => file.Name, file => (ReadOnlyMemory<byte>)Encoding.UTF8.GetBytes(file.Text));
}
