using System.Data.Common;
using System.Globalization;

namespace Headroom.Store.Databases;

/// <summary>One statement with its values.</summary>
internal readonly struct Sql
{
    private readonly DbCommand _command;

    /// <summary>A statement; its text is always our own, values go in by name.</summary>
    public Sql(DbConnection connection, DbTransaction? within, string text)
    {
        _command = connection.CreateCommand();
        _command.Transaction = within;
#pragma warning disable CA2100 // Every text is written in this project; none is made of what somebody typed.
        _command.CommandText = text;
#pragma warning restore CA2100
    }

    /// <summary>Gives a value.</summary>
    public Sql With(string name, object? value)
    {
        var parameter = _command.CreateParameter();
        parameter.ParameterName = "@" + name;
        parameter.Value = value ?? DBNull.Value;
        _command.Parameters.Add(parameter);
        return this;
    }

    /// <summary>Runs it.</summary>
    /// <returns>How many rows it changed.</returns>
    public int Run()
    {
        using var command = _command;
        return command.ExecuteNonQuery();
    }

    /// <summary>The number it comes to; 0 for none.</summary>
    public long Number()
    {
        using var command = _command;
        return Convert.ToInt64(command.ExecuteScalar() is { } value and not DBNull ? value : 0L, CultureInfo.InvariantCulture);
    }

    /// <summary>All rows.</summary>
    public List<T> Rows<T>(Func<DbDataReader, T> make)
    {
        using var command = _command;
        using var reader = command.ExecuteReader();
        var rows = new List<T>();
        while (reader.Read())
            rows.Add(make(reader));
        return rows;
    }
}
