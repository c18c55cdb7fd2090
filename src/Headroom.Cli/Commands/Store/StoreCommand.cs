using System.CommandLine;
using Headroom.Domain.Quantities;
using Headroom.Store;

namespace Headroom.Cli.Commands.Store;

/// <summary><c>headroom store list|import|export|copy|check</c>: the jobs that <c>serve</c> shows, on the command line.</summary>
internal static class StoreCommand
{
    /// <summary>Builds the command with its parts.</summary>
    public static Command Build(Desk desk) =>
        new HeadroomCommand("store", "Puts jobs into the store that 'headroom serve' shows, and takes them out", "list|import|export|copy|check", "headroom store list")
        {
            StoreListCommand.Build(desk),
            StoreImportCommand.Build(desk),
            StoreExportCommand.Build(desk),
            StoreCopyCommand.Build(desk),
            StoreCheckCommand.Build(desk),
        };

    /// <summary>The option that says where the store is.</summary>
    public static ValueOption Data() => new("--data", "DIR", $"the data folder; otherwise that of this user ({StorePlace.PostgresVariable} names a PostgreSQL server)");

    /// <summary>The option that says who it is.</summary>
    public static ValueOption By() => new("--by", "NAME", "who does it; otherwise the name of this user");

    /// <summary>Does something with the store, when it can be opened; what stands in the way is said.</summary>
    public static int With(string? data, Desk desk, Func<JobStore, int> what)
    {
        try
        {
            using var store = JobStore.Open(StorePlace.Told(data), TimeProvider.System);
            return what(store);
        }
        catch (StoreException reason)
        {
            return Refuse(desk, reason.Message);
        }
    }

    /// <summary>Says why something was not done.</summary>
    public static int Refuse(Desk desk, string reason)
    {
        desk.Err.WriteLine($"headroom: {reason}");
        return ExitCode.NotWorked;
    }

    /// <summary>What is said of a job that there is not.</summary>
    public static string NoJob(JobStore store, string id) =>
        $"there is no job '{id}' in {store.Name}" + (Spelling.Nearest(id, store.Jobs().Select(job => job.Id)) is { } near ? $"; did you mean {near}?" : "; 'headroom store list' lists all");
}
