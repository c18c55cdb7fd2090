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

    /// <summary>Does what is typed most, one word and no option, without the parser of command lines, which takes a sixth of a short start; null when the command has no such way.</summary>
    public Func<string, Desk, int>? OfOneWord { get; init; }
}
