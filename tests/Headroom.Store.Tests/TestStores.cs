using Headroom.Store.Databases;

namespace Headroom.Store.Tests;

/// <summary>Stores for tests, each in a folder or database of its own that goes with it.</summary>
internal sealed class TestStores : IDisposable
{
    /// <summary>The variable in which the test script names its PostgreSQL server.</summary>
    public const string ServerVariable = "HEADROOM_TEST_POSTGRES";

    public static IReadOnlyList<string> Kinds => ["SQLite", "PostgreSQL"];

    private readonly List<IDisposable> _open = [];
    private readonly string? _server;
    private readonly string? _database;

    public TestStores(string kind)
    {
        Folder = Directory.CreateTempSubdirectory("headroom-store-").FullName;
        if (kind != "PostgreSQL")
            return;
        _server = Environment.GetEnvironmentVariable(ServerVariable);
        Assert.SkipWhen(string.IsNullOrEmpty(_server), "no PostgreSQL server: ./test starts one where postgresql is installed");
        _database = "t" + Guid.NewGuid().ToString("N");
        Administer($"create database {_database}");
    }

    public string Folder { get; }

    public StorePlace Place => new(Folder, _server is null ? null : $"{_server};Database={_database}");

    public JobStore Open(TimeProvider? clock = null) => Kept(JobStore.Open(Place, clock ?? TimeProvider.System));

    public JobStore OpenFile(string file)
    {
        var folder = Directory.CreateTempSubdirectory("headroom-store-").FullName;
        File.Copy(file, new StorePlace(folder).File);
        return Kept(JobStore.Open(new(folder), TimeProvider.System));
    }

    /// <summary>The database itself, for what no store would do.</summary>
    public IDatabase Raw() => Kept<IDatabase>(Place.Postgres is { } told ? new PostgresDatabase(told) : new SqliteDatabase(Place.File));

    public void Dispose()
    {
        foreach (var open in _open)
            open.Dispose();
        Directory.Delete(Folder, recursive: true);
        if (_database is not null)
            Administer($"drop database {_database} with (force)");
    }

    private T Kept<T>(T open)
        where T : IDisposable
    {
        _open.Add(open);
        return open;
    }

    private void Administer(string statement)
    {
        using var server = new PostgresDatabase($"{_server};Database=postgres;Pooling=false");
        using var connection = server.Connect();
        new Sql(connection, null, statement).Run();
    }
}
