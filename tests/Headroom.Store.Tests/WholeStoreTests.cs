using Headroom.Store.Databases;

namespace Headroom.Store.Tests;

public sealed class WholeStoreTests
{
    private static readonly RevisionNote Note = new("R. Hollis", "first");

    public static TheoryData<string> Kinds => [.. TestStores.Kinds];

    [Theory, MemberData(nameof(Kinds))]
    public async Task A_copy_is_whole_and_sound_while_others_write(string kind)
    {
        using var stores = new TestStores(kind);
        var store = stores.Open();
        var job = store.Add("Barn", JobText.Of("1"), Note);
        store.Issue(job.Id, 1, [new("d", "p.pdf", "P", "%PDF"u8.ToArray())], "x");
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var writer = Task.Run(() =>
        {
            for (var head = 1; !stop.IsCancellationRequested; head++)
                Assert.True(store.Save(job.Id, head, ("Barn", JobText.Of($"{head + 1}")), Note).Ok);
        }, TestContext.Current.CancellationToken);
        var copies = Enumerable.Range(0, 5).Select(number => Path.Combine(stores.Folder, $"copy-{number}.db")).ToList();
        copies.ForEach(store.CopyTo);
        await stop.CancelAsync();
        await writer;
        foreach (var copy in copies)
        {
            var read = stores.OpenFile(copy);
            Assert.Empty(read.Check());
            var head = read.Find(job.Id)!.Head;
            Assert.Equal($"{head}", read.Read(job.Id)!.Text);
            Assert.Single(read.Papers(job.Id));
            // It is a store of its own: numbers of papers go on.
            read.Issue(job.Id, 1, [new("d", "q.pdf", "Q", "%PDF"u8.ToArray())], "x");
            Assert.Equal(2, read.Papers(job.Id).Count);
        }
    }

    [Fact]
    public void A_copy_is_never_written_over_a_file()
    {
        using var stores = new TestStores("SQLite");
        var store = stores.Open();
        var taken = Path.Combine(stores.Folder, "taken.db");
        File.WriteAllText(taken, "mine");
        Assert.Contains("is there already", Assert.Throws<StoreException>(() => store.CopyTo(taken)).Message, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(taken));
        Assert.Contains("no folder", Assert.Throws<StoreException>(() => store.CopyTo(Path.Combine(stores.Folder, "no", "copy.db"))).Message, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void A_content_that_is_not_what_was_put_in_is_found(string kind)
    {
        using var stores = new TestStores(kind);
        var store = stores.Open();
        var job = store.Add("Barn", JobText.Of("1"), Note);
        Assert.Empty(store.Check());
        var raw = stores.Raw();
        using var connection = raw.Connect();
        new Sql(connection, null, "update content set bytes = @bytes").With("bytes", "2"u8.ToArray()).Run();
        Assert.Contains("not what was put in", Assert.Single(store.Check()), StringComparison.Ordinal);
        new Sql(connection, null, "update content set bytes = @bytes").With("bytes", "1"u8.ToArray()).Run();
        new Sql(connection, null, "update job set head = 3").Run();
        Assert.Equal($"job {job.Id} has 1 revisions, the last of number 1; there should be 3", Assert.Single(store.Check()));
    }

    [Fact]
    public void A_file_that_is_no_store_is_refused_and_left_as_it_is()
    {
        using var stores = new TestStores("SQLite");
        File.WriteAllText(stores.Place.File, "this is no database, whatever it is called");
        var fault = Assert.Throws<StoreException>(() => stores.Open());
        Assert.Contains("headroom.db cannot be worked with", fault.Message, StringComparison.Ordinal);
        Assert.StartsWith("this is no database", File.ReadAllText(stores.Place.File), StringComparison.Ordinal);
    }

    [Fact]
    public void A_server_that_is_not_there_is_refused_with_what_to_do()
    {
        using var stores = new TestStores("SQLite");
        Assert.Contains("cannot be worked with", Assert.Throws<StoreException>(() => JobStore.Open(new(stores.Folder, "Host=127.0.0.1;Port=1;Username=x;Database=x;Timeout=2"), TimeProvider.System)).Message, StringComparison.Ordinal);
        Assert.Contains(StorePlace.PostgresVariable, Assert.Throws<StoreException>(() => JobStore.Open(new(stores.Folder, "nonsense"), TimeProvider.System)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_refused()
    {
        using var stores = new TestStores("SQLite");
        var file = Path.Combine(stores.Folder, "file");
        File.WriteAllText(file, "");
        Assert.Contains("data folder", Assert.Throws<StoreException>(() => JobStore.Open(new(file), TimeProvider.System)).Message, StringComparison.Ordinal);
    }

    // A full disk, as the file feels it: no page more.
    [Fact]
    public void What_does_not_fit_on_the_disk_is_refused_and_all_before_it_stays()
    {
        using var stores = new TestStores("SQLite");
        var id = stores.Open().Add("Barn", JobText.Of("small"), Note).Id;
        using var full = new SqliteDatabase(stores.Place.File, mostPages: 40);
        var fault = Assert.Throws<StoreException>(() => Opening.Guarded(full, "the file", () =>
        {
            using var connection = full.Connect();
            return new Sql(connection, null, "insert into content (hash, bytes) values ('x', zeroblob(1000000))").Run();
        }));
        Assert.Contains("full", fault.Message, StringComparison.Ordinal);
        Assert.Empty(stores.Open().Check());
        Assert.Equal("small", stores.Open().Read(id)!.Text);
    }
}
