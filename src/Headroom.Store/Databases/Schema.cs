using System.Data.Common;

namespace Headroom.Store.Databases;

/// <summary>The tables, step by step. A step that was ever in use is never changed; what is new is a step of its own.</summary>
internal static class Schema
{
    /// <summary>The table that says which schema a store has.</summary>
    public const string VersionTable = "schema_version";

    /// <summary>All steps, in order.</summary>
    public static IReadOnlyList<SchemaStep> Steps { get; } =
    [
        new(
            1,
            [
                "create table content (hash text primary key, bytes {bytes} not null)",
                "create table job (id text primary key, name text not null, head bigint not null, changed text not null, changed_by text not null)",
                "create table revision (job text not null references job (id), number bigint not null, at text not null, made_by text not null, what text not null, hash text not null references content (hash), primary key (job, number))",
                "create table beside (job text not null, number bigint not null, name text not null, hash text not null references content (hash), primary key (job, number, name), foreign key (job, number) references revision (job, number))",
                "create table kept (job text not null, number bigint not null, kind text not null, hash text not null references content (hash), primary key (job, number, kind), foreign key (job, number) references revision (job, number))",
                "create table paper (id {numbered}, job text not null, number bigint not null, design text not null, name text not null, title text not null, at text not null, made_by text not null, hash text not null references content (hash), foreign key (job, number) references revision (job, number))",
            ],
            ["content", "job", "revision", "beside", "kept", "paper"]),
        new(
            2,
            [
                "create table task (id {numbered}, job text not null, number bigint not null, kind text not null, asked text not null, made_by text not null, at text not null, state text not null, told text not null, owner text, beat text, hash text references content (hash), foreign key (job, number) references revision (job, number))",
                "create index task_of_job on task (job, kind, id)",
            ],
            ["task"]),
    ];

    /// <summary>The schema of this program.</summary>
    public static int Newest => Steps[^1].Version;

    /// <summary>The schema a store has; 0 for none.</summary>
    public static int Of(IDatabase database, DbConnection connection) =>
        database.HasTable(connection, VersionTable) ? (int)new Sql(connection, null, $"select max(version) from {VersionTable}").Number() : 0;

    /// <summary>The tables of a schema, in the order in which rows can be put in.</summary>
    public static IReadOnlyList<string> Tables(int version) => [.. Steps.Where(step => step.Version <= version).SelectMany(step => step.Tables)];

    /// <summary>Leads a store from its schema to another, all in one go or not at all.</summary>
    public static void Lead(IDatabase database, DbConnection connection, (int From, int To) way, string at)
    {
        using var within = connection.BeginTransaction();
        if (way.From == 0)
            new Sql(connection, within, $"create table {VersionTable} (version bigint primary key, at text not null)").Run();
        foreach (var step in Steps.Where(step => step.Version > way.From && step.Version <= way.To))
        {
            foreach (var statement in step.Statements)
                new Sql(connection, within, statement.Replace("{bytes}", database.BytesType, StringComparison.Ordinal).Replace("{numbered}", database.NumberedType, StringComparison.Ordinal)).Run();
            new Sql(connection, within, $"insert into {VersionTable} (version, at) values (@version, @at)").With("version", (long)step.Version).With("at", at).Run();
        }

        within.Commit();
    }
}
