using System.CommandLine;

namespace Headroom.Cli.Commands;

/// <summary>A command that may be built.</summary>
/// <param name="Name">The word typed.</param>
/// <param name="About">What it does, in one line.</param>
/// <param name="Build">Builds it.</param>
internal sealed record CommandEntry(string Name, string About, Func<Desk, Command> Build)
{
    /// <summary>True when it begins by reading a job.</summary>
    public bool ReadsJob { get; init; }
}
