using System.Data.Common;
using System.Globalization;

namespace Headroom.Store.Databases;

/// <summary>Opens stores, leads older ones to the schema of today, and copies them.</summary>
internal static class Opening
{
    /// <summary>Opens or makes a store.</summary>
    public static JobStore Open(StorePlace place, TimeProvider clock, Func<IDatabase, string, JobStore> make)
    {
        Prepare(place.Folder);
        var name = place.Postgres is null ? place.File : "the PostgreSQL server";
        var database = Of(place);
        try
        {
            return Guarded(database, name, () =>
            {
                Lead(database, place, clock, name);
                return make(database, name);
            });
        }
        catch
        {
            database.Dispose();
            throw;
        }
    }

    /// <summary>Does something; what the database says of its place becomes a message for people.</summary>
    public static T Guarded<T>(IDatabase database, string name, Func<T> what)
    {
        try
        {
            return what();
        }
        catch (DbException fault) when (database.IsAboutThePlace(fault))
        {
            throw new StoreException($"{name} cannot be worked with ({fault.Message.TrimEnd('.')}); see whether it is there, whether you may write to it, and whether the disk has room. Nothing was changed.", fault);
        }
    }

    /// <summary>Writes a copy into a new file: aside first, so that no half of one is ever seen.</summary>
    public static void Copy(IDatabase database, string file, TimeProvider clock)
    {
        if (Path.Exists(file))
            throw new StoreException($"{file} is there already and is left as it is; name another file");
        if (Path.GetDirectoryName(Path.GetFullPath(file)) is { } folder && !Directory.Exists(folder))
            throw new StoreException($"there is no folder {folder}; make it first");
        var aside = $"{file}.new-{Environment.ProcessId.ToString(CultureInfo.InvariantCulture)}";
        try
        {
            using (var from = database.Connect())
            {
                if (database is SqliteDatabase)
                    SqliteDatabase.CopyInto(from, aside);
                else
                    CopyRows((database, from), aside, clock);
            }

            File.Move(aside, file, overwrite: false);
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
        {
            throw new StoreException($"{file} cannot be written ({reason.Message.TrimEnd('.')})", reason);
        }
        finally
        {
            File.Delete(aside);
        }
    }

    private static void CopyRows((IDatabase Database, DbConnection Connection) from, string file, TimeProvider clock)
    {
        var version = Schema.Of(from.Database, from.Connection);
        using var target = new SqliteDatabase(file);
        using (var to = target.Connect())
        {
            Schema.Lead(target, to, (0, version), Stamp(clock));
            RowCopy.All(from, (target, to), version);
            // Into one file, without the log beside it.
            new Sql(to, null, "pragma journal_mode = delete").Run();
        }
    }

    private static void Lead(IDatabase database, StorePlace place, TimeProvider clock, string name)
    {
        using var connection = database.Connect();
        var version = Schema.Of(database, connection);
        if (version > Schema.Newest)
            throw new StoreException($"{name} was made by a newer headroom (its schema is {version}, this one knows up to {Schema.Newest}); use the newer one");
        if (version == Schema.Newest)
            return;
        if (version > 0)
            Copy(database, Path.Combine(place.Folder, $"before-schema-{Schema.Newest}-{clock.GetUtcNow().ToString("yyyyMMdd-HHmmss-fff", CultureInfo.InvariantCulture)}.db"), clock);
        try
        {
            Schema.Lead(database, connection, (version, Schema.Newest), Stamp(clock));
        }
        catch (DbException) when (Schema.Of(database, connection) == Schema.Newest)
        {
            // Another process that was started at the same moment has done it.
        }
    }

    private static IDatabase Of(StorePlace place)
    {
        if (place.Postgres is null)
            return new SqliteDatabase(place.File);
        try
        {
            return new PostgresDatabase(place.Postgres);
        }
        catch (ArgumentException reason)
        {
            throw new StoreException($"{StorePlace.PostgresVariable} cannot be understood ({reason.Message.TrimEnd('.')}); write Host=...;Username=...;Database=...", reason);
        }
    }

    // For this user alone: it holds clients' sites and what they pay.
    private static void Prepare(string folder)
    {
        try
        {
            if (OperatingSystem.IsWindows())
                Directory.CreateDirectory(folder);
            else
                Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new StoreException($"the data folder {folder} cannot be made ({reason.Message.TrimEnd('.')}); name one where you may write", reason);
        }
    }

    private static string Stamp(TimeProvider clock) => clock.GetUtcNow().ToString("O", CultureInfo.InvariantCulture);
}
