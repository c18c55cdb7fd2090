using System.Data;
using System.Data.Common;

namespace Headroom.Store.Databases;

/// <summary>What differs between the databases.</summary>
internal interface IDatabase : IDisposable
{
    /// <summary>The type of a column of bytes.</summary>
    string BytesType { get; }

    /// <summary>The type of a column that numbers its rows.</summary>
    string NumberedType { get; }

    /// <summary>Under which a reader sees one state from its first to its last question.</summary>
    IsolationLevel OneState { get; }

    /// <summary>An open connection.</summary>
    DbConnection Connect();

    /// <summary>Says whether a table of a name is there.</summary>
    bool HasTable(DbConnection connection, string table);

    /// <summary>What the database finds wrong with its own file; empty when nothing, or when it has no such question.</summary>
    IEnumerable<string> OwnComplaints(DbConnection connection);

    /// <summary>Puts a numbered row's counter behind the rows that were put in with their numbers.</summary>
    void GoOnCounting(DbConnection connection, string table);

    /// <summary>True for what an exception tells of the place (no disk, no server, no rights), not of a fault in here.</summary>
    bool IsAboutThePlace(DbException fault);
}
