using Headroom.Store.Databases;

namespace Headroom.Store.Tests;

public sealed class SchemaTests
{
    public static TheoryData<string> Kinds => [.. TestStores.Kinds];

    // Made by the program of its day and kept: two revisions of a job with a sheet beside it, what they were worked with, and a paper.
    public static TheoryData<string, int> Former => new(TestStores.Kinds.SelectMany(kind => Enumerable.Range(1, Schema.Newest).Select(version => (kind, version))));

    [Theory, MemberData(nameof(Former))]
    public void A_store_of_every_former_schema_is_led_to_the_newest_with_all_that_is_in_it(string kind, int version)
    {
        using var stores = new TestStores(kind);
        Lay(stores, version);
        var store = stores.Open();
        Assert.Empty(store.Check());
        Assert.Equal(["two", "one"], store.Revisions("barn").Select(revision => revision.What));
        Assert.Equal("job: two", store.Read("barn", 2)!.Text);
        Assert.Equal("a,b", System.Text.Encoding.UTF8.GetString(store.Read("barn", 1)!.Files["drops.csv"].Span));
        Assert.Equal("%PDF", System.Text.Encoding.UTF8.GetString(store.Paper("barn", Assert.Single(store.Papers("barn")).Id)!.Value.Bytes));
        Assert.NotNull(store.Kept("barn", 1, "models"));
        var copies = Directory.GetFiles(stores.Folder, "before-schema-*.db");
        Assert.Equal(version == Schema.Newest ? 0 : 1, copies.Length);
        Assert.All(copies, copy => Assert.Equal(version, VersionOf(copy)));
    }

    [Theory, MemberData(nameof(Kinds))]
    public void A_store_of_a_newer_program_is_refused(string kind)
    {
        using var stores = new TestStores(kind);
        stores.Open();
        using var connection = stores.Raw().Connect();
        new Sql(connection, null, $"insert into {Schema.VersionTable} (version, at) values (99, 'later')").Run();
        Assert.Contains("newer headroom", Assert.Throws<StoreException>(() => stores.Open()).Message, StringComparison.Ordinal);
    }

    // HEADROOM_ACCEPT=1 makes the fixture of the newest schema where there is none; one that is there is never made again.
    [Fact]
    public void There_is_a_fixture_of_every_schema()
    {
        var newest = Repository.PathOf($"tests/Headroom.Store.Tests/Fixtures/schema-{Schema.Newest}.db");
        if (Golden.Accepting && !File.Exists(newest))
            Make(newest);
        Assert.All(Enumerable.Range(1, Schema.Newest), version => Assert.Equal(version, VersionOf(Repository.PathOf($"tests/Headroom.Store.Tests/Fixtures/schema-{version}.db"))));
    }

    private static void Make(string file)
    {
        using var stores = new TestStores("SQLite");
        var store = stores.Open(new SetClock(new(2026, 11, 25, 8, 0, 0, TimeSpan.Zero)));
        var first = JobText.Of("job: one") with { Files = new Dictionary<string, ReadOnlyMemory<byte>> { ["drops.csv"] = "a,b"u8.ToArray() } };
        store.Add("Barn", first, new("R. Hollis", "one"));
        store.Save("barn", 1, ("Barn", first.With("job: two")), new("J. Marsh", "two"));
        store.Keep("barn", 1, [new("models", "m"u8.ToArray())]);
        store.Issue("barn", 2, [new("d", "limits.pdf", "Limits", "%PDF"u8.ToArray())], "R. Hollis");
        store.CopyTo(file);
    }

    private static void Lay(TestStores stores, int version)
    {
        var fixture = Repository.PathOf($"tests/Headroom.Store.Tests/Fixtures/schema-{version}.db");
        if (stores.Place.Postgres is null)
        {
            File.Copy(fixture, stores.Place.File);
            return;
        }

        var raw = stores.Raw();
        using var to = raw.Connect();
        Schema.Lead(raw, to, (0, version), "2026");
        var copy = Path.Combine(stores.Folder, "fixture.db");
        File.Copy(fixture, copy);
        using var file = new SqliteDatabase(copy);
        using var from = file.Connect();
        RowCopy.All((file, from), (raw, to), version);
    }

    private static int VersionOf(string file)
    {
        var copy = Path.GetTempFileName();
        File.Copy(file, copy, overwrite: true);
        try
        {
            using var database = new SqliteDatabase(copy);
            using var connection = database.Connect();
            return Schema.Of(database, connection);
        }
        finally
        {
            File.Delete(copy);
        }
    }
}
