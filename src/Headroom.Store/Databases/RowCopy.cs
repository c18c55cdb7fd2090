using System.Data.Common;

namespace Headroom.Store.Databases;

/// <summary>Copies all rows of one store into another of the same schema, whatever the databases are.</summary>
internal static class RowCopy
{
    /// <summary>Copies them as they are at one moment.</summary>
    public static void All((IDatabase Database, DbConnection Connection) from, (IDatabase Database, DbConnection Connection) to, int version)
    {
        using var seen = from.Connection.BeginTransaction(from.Database.OneState);
        using var written = to.Connection.BeginTransaction();
        foreach (var table in Schema.Tables(version))
            Copy(table, (from.Connection, seen), (to.Connection, written));
        written.Commit();
        foreach (var table in Schema.Tables(version).Where(table => table is "paper" or "task"))
            to.Database.GoOnCounting(to.Connection, table);
    }

    private static void Copy(string table, (DbConnection Connection, DbTransaction Within) from, (DbConnection Connection, DbTransaction Within) to)
    {
        List<string>? columns = null;
        var rows = new Sql(from.Connection, from.Within, $"select * from {table}").Rows(reader =>
        {
            columns ??= [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetName)];
            var values = new object[reader.FieldCount];
            reader.GetValues(values);
            return values;
        });
        foreach (var row in rows)
        {
            var sql = new Sql(to.Connection, to.Within, $"insert into {table} ({string.Join(", ", columns!)}) values ({string.Join(", ", columns!.Select(column => "@" + column))})");
            for (var at = 0; at < row.Length; at++)
                sql.With(columns![at], row[at]);
            sql.Run();
        }
    }
}
