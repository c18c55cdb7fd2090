using System.Data;
using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace Headroom.Store.Databases;

/// <summary>A file of its own. Written ahead into a log, and to the disk before anything is acknowledged.</summary>
internal sealed class SqliteDatabase(string file, long? mostPages = null) : IDatabase
{
    // How long one writer waits for another [s].
    private const int Patience = 10;

    private readonly string _told = new SqliteConnectionStringBuilder { DataSource = file, DefaultTimeout = Patience, ForeignKeys = true }.ToString();

    public string BytesType => "blob";

    public string NumberedType => "integer primary key autoincrement";

    public IsolationLevel OneState => IsolationLevel.Serializable;

    public DbConnection Connect()
    {
        var connection = new SqliteConnection(_told);
        connection.Open();
        using var command = connection.CreateCommand();
        // FULL belongs to each connection; the log belongs to the file.
        command.CommandText = "pragma journal_mode = wal; pragma synchronous = full;" + (mostPages is { } most ? $"pragma max_page_count = {most};" : "");
        command.ExecuteNonQuery();
        return connection;
    }

    public bool HasTable(DbConnection connection, string table) =>
        new Sql(connection, null, "select count(*) from sqlite_master where type = 'table' and name = @name").With("name", table).Number() > 0;

    public IEnumerable<string> OwnComplaints(DbConnection connection)
    {
        var said = new Sql(connection, null, "pragma integrity_check").Rows(row => row.GetString(0));
        var keys = new Sql(connection, null, "pragma foreign_key_check").Rows(row => $"a row of {row.GetString(0)} leads nowhere");
        return [.. said.Where(line => line != "ok"), .. keys];
    }

    public void GoOnCounting(DbConnection connection, string table)
    {
        // It counts on from the greatest number by itself.
    }

    public bool IsAboutThePlace(DbException fault) => fault is SqliteException;

    /// <summary>Writes one compact file with the state of this moment, while others go on writing.</summary>
    public static void CopyInto(DbConnection connection, string target) => new Sql(connection, null, "vacuum into @target").With("target", target).Run();

    public void Dispose() => SqliteConnection.ClearPool(new SqliteConnection(_told));
}
