namespace Headroom.Store;

/// <summary>Where a store is: a data folder with a file of its own, or a PostgreSQL server beside the folder.</summary>
/// <param name="Folder">The data folder; made when it is not there.</param>
/// <param name="Postgres">How to reach the server, such as <c>Host=...;Username=...;Database=...</c>; null for the file in the folder.</param>
public sealed record StorePlace(string Folder, string? Postgres = null)
{
    /// <summary>The variable that names the server. It may hold a password, so it is no option on the command line.</summary>
    public const string PostgresVariable = "HEADROOM_DATABASE";

    private const string FileName = "headroom.db";

    /// <summary>The file that holds the jobs where there is no server.</summary>
    public string File => Path.Combine(Folder, FileName);

    /// <summary>The place as a person told it: the folder, and the server if the variable names one.</summary>
    /// <param name="folder">The folder; null for the usual one of this user.</param>
    public static StorePlace Told(string? folder)
    {
        var server = Environment.GetEnvironmentVariable(PostgresVariable);
        return new(folder ?? Usual, string.IsNullOrWhiteSpace(server) ? null : server);
    }

    private static string Usual => Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "headroom");
}
