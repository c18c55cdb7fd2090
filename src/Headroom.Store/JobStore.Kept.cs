using System.Data.Common;
using Headroom.Store.Databases;

namespace Headroom.Store;

/// <summary>What is kept with revisions: what they were worked with, and papers.</summary>
public sealed partial class JobStore
{
    private const string PaperColumns = "p.id, p.job, p.number, p.design, p.name, p.title, p.at, p.made_by, length(c.bytes)";

    /// <summary>Keeps what a revision was worked with. What is kept already stays as it is.</summary>
    /// <param name="id">The job.</param>
    /// <param name="number">The revision.</param>
    /// <param name="parts">The parts.</param>
    public void Keep(string id, int number, IReadOnlyList<KeptPart> parts) => Asked(connection =>
    {
        using var within = connection.BeginTransaction();
        foreach (var part in parts)
        {
            new Sql(connection, within, "insert into kept (job, number, kind, hash) values (@job, @number, @kind, @hash) on conflict do nothing")
                .With("job", id).With("number", (long)number).With("kind", part.Kind).With("hash", Content(connection, within, part.Bytes)).Run();
        }

        within.Commit();
        return true;
    });

    /// <summary>A part that was kept with a revision; null when there is none.</summary>
    /// <param name="id">The job.</param>
    /// <param name="number">The revision.</param>
    /// <param name="kind">The kind of the part.</param>
    public KeptPart? Kept(string id, int number, string kind) => Asked(connection =>
        new Sql(connection, null, "select k.kind, c.bytes from kept k join content c on c.hash = k.hash where k.job = @job and k.number = @number and k.kind = @kind")
            .With("job", id).With("number", (long)number).With("kind", kind).Rows(row => new KeptPart(row.GetString(0), (byte[])row[1]))).FirstOrDefault();

    /// <summary>Keeps papers of a revision as they went out.</summary>
    /// <param name="id">The job.</param>
    /// <param name="number">The revision they were made of.</param>
    /// <param name="papers">The papers.</param>
    /// <param name="by">Who made them.</param>
    public void Issue(string id, int number, IReadOnlyList<NewPaper> papers, string by)
    {
        var at = Now();
        Asked(connection =>
        {
            using var within = connection.BeginTransaction();
            foreach (var paper in papers)
            {
                new Sql(connection, within, "insert into paper (job, number, design, name, title, at, made_by, hash) values (@job, @number, @design, @name, @title, @at, @by, @hash)")
                    .With("job", id).With("number", (long)number).With("design", paper.Design).With("name", paper.Name).With("title", paper.Title)
                    .With("at", at).With("by", by).With("hash", Content(connection, within, paper.Bytes)).Run();
            }

            within.Commit();
            return true;
        });
    }

    /// <summary>The papers of a job that went out, the newest first.</summary>
    /// <param name="id">The job.</param>
    public IReadOnlyList<IssuedPaper> Papers(string id) => Asked(connection =>
        new Sql(connection, null, $"select {PaperColumns} from paper p join content c on c.hash = p.hash where p.job = @job order by p.id desc").With("job", id).Rows(Paper));

    /// <summary>A paper with its bytes; null when the job has none of that number.</summary>
    /// <param name="id">The job.</param>
    /// <param name="paper">The number of the paper.</param>
    public (IssuedPaper Paper, byte[] Bytes)? Paper(string id, long paper)
    {
        var found = Asked(connection =>
            new Sql(connection, null, $"select {PaperColumns}, c.bytes from paper p join content c on c.hash = p.hash where p.job = @job and p.id = @id")
                .With("job", id).With("id", paper).Rows(row => (Paper: Paper(row), Bytes: (byte[])row[9])));
        return found.Count == 0 ? null : found[0];
    }

    private static IssuedPaper Paper(DbDataReader row) => new(
        row.GetInt64(0), row.GetString(1), (int)row.GetInt64(2), row.GetString(3), row.GetString(4), row.GetString(5), Time(row.GetString(6)), row.GetString(7), row.GetInt64(8));
}
