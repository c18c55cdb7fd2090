using Headroom.Store.Databases;

namespace Headroom.Store;

/// <summary>The store as a whole: whether it is sound, and a copy of it.</summary>
public sealed partial class JobStore
{
    /// <summary>Looks whether everything that was put in is there and is what it was.</summary>
    /// <returns>What is wrong, in sentences; empty when nothing is.</returns>
    public IReadOnlyList<string> Check() => Asked(connection =>
    {
        var complaints = new List<string>(_database.OwnComplaints(connection));
        foreach (var hash in new Sql(connection, null, "select hash from content").Rows(row => row.GetString(0)))
        {
            var bytes = new Sql(connection, null, "select bytes from content where hash = @hash").With("hash", hash).Rows(row => (byte[])row[0]);
            if (bytes.Count != 1 || HashOf(bytes[0]) != hash)
                complaints.Add($"the content {hash[..12]} is not what was put in");
        }

        complaints.AddRange(new Sql(connection, null, "select j.id, j.head, count(r.number), min(r.number), max(r.number) from job j left join revision r on r.job = j.id group by j.id, j.head order by j.id")
            .Rows(row => (Id: row.GetString(0), Head: row.GetInt64(1), Count: row.GetInt64(2), Greatest: row.IsDBNull(4) ? 0 : row.GetInt64(4)))
            .Where(job => job.Count != job.Head || job.Greatest != job.Head)
            .Select(job => $"job {job.Id} has {job.Count} revisions, the last of number {job.Greatest}; there should be {job.Head}"));
        foreach (var table in (string[])["revision", "beside", "kept", "paper"])
        {
            var lost = new Sql(connection, null, $"select count(*) from {table} t left join content c on c.hash = t.hash where c.hash is null").Number();
            if (lost > 0)
                complaints.Add($"{lost} rows of {table} have lost their content");
        }

        return complaints;
    });

    /// <summary>Writes a copy of the store into a new file, as it is at one moment, while others go on working. It is a store of its own.</summary>
    /// <param name="file">The file, which must not be there.</param>
    /// <exception cref="StoreException">The file is there already or cannot be written; nothing is left of it then.</exception>
    public void CopyTo(string file) => Opening.Guarded(_database, Name, () =>
    {
        Opening.Copy(_database, file, _clock);
        return true;
    });
}
