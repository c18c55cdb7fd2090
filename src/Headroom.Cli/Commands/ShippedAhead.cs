using Headroom.Domain.Catalogues;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary>Opens the shipped catalogue on a second thread from the first moment of a process, while what was typed is still being understood.</summary>
internal static class ShippedAhead
{
    // The keys that nearly every job has: what reads them is made ready meanwhile.
    private const string CommonKeys = "headroom job survey spaces size kind drops from to length cable endpoints model drop near designs switches in patch";

    private static Loaded<Catalogue>? _shipped;
    private static Thread? _thread;

    /// <summary>Begins, when the command that was typed is one that reads a job.</summary>
    /// <param name="words">What was typed.</param>
    public static void Begin(string[] words)
    {
        if (words.Length < 2 || CommandList.Find(words[0]) is not { ReadsJob: true })
            return;
        _thread = new Thread(Open) { IsBackground = true };
        _thread.Start();
    }

    /// <summary>What was opened; waits for it. Null when nobody began, or when it could not be opened: then whoever asks reads it and is told why.</summary>
    public static Loaded<Catalogue>? Opened
    {
        get
        {
            _thread?.Join();
            return _shipped;
        }
    }

    private static void Open()
    {
        try
        {
            JobFile.Prepare(CommonKeys);
            _shipped = CatalogueFiles.ReadShipped();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            _shipped = null;
        }
    }
}
