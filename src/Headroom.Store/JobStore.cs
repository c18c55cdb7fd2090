using System.Data.Common;
using System.Globalization;
using System.Security.Cryptography;
using Headroom.Store.Databases;

namespace Headroom.Store;

/// <summary>Jobs with every revision, what each was worked with, and the papers that went out. Nothing in it is ever changed or taken away.</summary>
public sealed partial class JobStore : IDisposable
{
    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    private readonly IDatabase _database;
    private readonly TimeProvider _clock;

    private JobStore(IDatabase database, TimeProvider clock, string name)
    {
        _database = database;
        _clock = clock;
        Name = name;
    }

    /// <summary>What the store is called in messages: its file, or the server.</summary>
    public string Name { get; }

    /// <summary>Opens a store; makes it where there is none, and leads an older one to the schema of today after a copy of it was made.</summary>
    /// <param name="place">Where it is.</param>
    /// <param name="clock">Tells the time of revisions.</param>
    /// <returns>The store.</returns>
    /// <exception cref="StoreException">It cannot be reached, read or written.</exception>
    public static JobStore Open(StorePlace place, TimeProvider clock) =>
        Opening.Open(place, clock, (database, name) => new JobStore(database, clock, name));

    /// <summary>All jobs, the one changed last first.</summary>
    public IReadOnlyList<StoredJob> Jobs() => Asked(connection => new Sql(connection, null, $"select {JobColumns} from job order by changed desc, id").Rows(Job));

    /// <summary>One job; null when there is none of that id.</summary>
    /// <param name="id">Its id.</param>
    public StoredJob? Find(string id) => Asked(connection => new Sql(connection, null, $"select {JobColumns} from job where id = @id").With("id", id).Rows(Job)).FirstOrDefault();

    /// <summary>The revisions of a job, the newest first.</summary>
    /// <param name="id">Its id.</param>
    public IReadOnlyList<JobRevision> Revisions(string id) => Asked(connection =>
        new Sql(connection, null, "select job, number, at, made_by, what from revision where job = @id order by number desc").With("id", id).Rows(Revision));

    /// <summary>A job as it stood in a revision, byte for byte.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="number">The revision; null for the last.</param>
    /// <returns>The job, or null when there is none such.</returns>
    public JobText? Read(string id, int? number = null) => Asked(connection =>
    {
        var wanted = number ?? (int)new Sql(connection, null, "select head from job where id = @id").With("id", id).Number();
        var text = new Sql(connection, null, "select c.bytes from revision r join content c on c.hash = r.hash where r.job = @id and r.number = @number")
            .With("id", id).With("number", (long)wanted).Rows(row => (byte[])row[0]);
        if (text.Count == 0)
            return null;
        var files = new Sql(connection, null, "select b.name, c.bytes from beside b join content c on c.hash = b.hash where b.job = @id and b.number = @number order by b.name")
            .With("id", id).With("number", (long)wanted).Rows(row => (Name: row.GetString(0), Bytes: (byte[])row[1]));
        return new JobText(text[0], files.ToDictionary(file => file.Name, file => (ReadOnlyMemory<byte>)file.Bytes, StringComparer.Ordinal));
    });

    /// <summary>Puts a new job in, as its first revision.</summary>
    /// <param name="name">The name people say.</param>
    /// <param name="text">The job.</param>
    /// <param name="note">Who, and where it comes from.</param>
    /// <returns>The job with the id it got, made of its name.</returns>
    public StoredJob Add(string name, JobText text, RevisionNote note)
    {
        for (var tries = 1; ; tries++)
        {
            var id = FreeId(JobId.Of(name));
            var at = Now();
            var added = Asked(connection =>
            {
                using var within = connection.BeginTransaction();
                // Somebody else may have taken the id since it was found free.
                if (new Sql(connection, within, "insert into job (id, name, head, changed, changed_by) values (@id, @name, 1, @at, @by) on conflict do nothing")
                    .With("id", id).With("name", name).With("at", at).With("by", note.By).Run() == 0)
                    return false;
                Put(connection, within, (id, 1, at), text, note);
                within.Commit();
                return true;
            });
            if (added)
                return new(id, name, 1, Time(at), note.By);
        }
    }

    /// <summary>Saves a change of a job, unless somebody else saved one meanwhile.</summary>
    /// <param name="id">The job.</param>
    /// <param name="basedOn">The revision that was changed.</param>
    /// <param name="change">The job with the change in it, and the name people say.</param>
    /// <param name="note">Who, and what changed.</param>
    /// <returns>The new revision; or none, when the revision it was based on is no longer the last: nothing is saved then.</returns>
    public SavedJob Save(string id, int basedOn, (string Name, JobText Text) change, RevisionNote note)
    {
        var at = Now();
        return Asked(connection =>
        {
            using var within = connection.BeginTransaction();
            var taken = new Sql(connection, within, "update job set head = head + 1, name = @name, changed = @at, changed_by = @by where id = @id and head = @on")
                .With("name", change.Name).With("at", at).With("by", note.By).With("id", id).With("on", (long)basedOn).Run();
            if (taken == 0)
                return new SavedJob(null, (int)new Sql(connection, within, "select head from job where id = @id").With("id", id).Number());
            Put(connection, within, (id, basedOn + 1, at), change.Text, note);
            within.Commit();
            return new SavedJob(new(id, basedOn + 1, Time(at), note.By, note.What), basedOn + 1);
        });
    }

    /// <inheritdoc/>
    public void Dispose() => _database.Dispose();

    private const string JobColumns = "id, name, head, changed, changed_by";

    private static void Put(DbConnection connection, DbTransaction within, (string Job, int Number, string At) of, JobText text, RevisionNote note)
    {
        new Sql(connection, within, "insert into revision (job, number, at, made_by, what, hash) values (@job, @number, @at, @by, @what, @hash)")
            .With("job", of.Job).With("number", (long)of.Number).With("at", of.At).With("by", note.By).With("what", note.What).With("hash", Content(connection, within, text.Bytes)).Run();
        foreach (var (name, bytes) in text.Files)
        {
            new Sql(connection, within, "insert into beside (job, number, name, hash) values (@job, @number, @name, @hash)")
                .With("job", of.Job).With("number", (long)of.Number).With("name", name).With("hash", Content(connection, within, bytes)).Run();
        }
    }

    // Each content once: revisions share their sheets, and all jobs the models.
    private static string Content(DbConnection connection, DbTransaction within, ReadOnlyMemory<byte> bytes)
    {
        var hash = HashOf(bytes.Span);
        new Sql(connection, within, "insert into content (hash, bytes) values (@hash, @bytes) on conflict do nothing").With("hash", hash).With("bytes", bytes.ToArray()).Run();
        return hash;
    }

    private static string HashOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private string FreeId(string wanted)
    {
        var taken = Asked(connection => new Sql(connection, null, "select id from job where id = @id or id like @like").With("id", wanted).With("like", wanted + "-%").Rows(row => row.GetString(0))).ToHashSet();
        var id = wanted;
        for (var number = 2; taken.Contains(id); number++)
            id = $"{wanted}-{number.ToString(CultureInfo.InvariantCulture)}";
        return id;
    }

    private T Asked<T>(Func<DbConnection, T> ask) => Opening.Guarded(_database, Name, () =>
    {
        using var connection = _database.Connect();
        return ask(connection);
    });

    private string Now() => _clock.GetUtcNow().ToString(TimeFormat, CultureInfo.InvariantCulture);

    private static DateTimeOffset Time(string text) => DateTimeOffset.ParseExact(text, TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal);

    private static StoredJob Job(DbDataReader row) => new(row.GetString(0), row.GetString(1), (int)row.GetInt64(2), Time(row.GetString(3)), row.GetString(4));

    private static JobRevision Revision(DbDataReader row) => new(row.GetString(0), (int)row.GetInt64(1), Time(row.GetString(2)), row.GetString(3), row.GetString(4));
}
