using System.CommandLine;

namespace Headroom.Cli.Commands;

/// <summary>A command with what its help shows beside the options.</summary>
/// <param name="name">The word typed.</param>
/// <param name="about">What it does, in one line.</param>
/// <param name="usage">The words behind it: <c>JOB [ENTRY...]</c>.</param>
/// <param name="examples">Lines that work as they stand.</param>
internal sealed class HeadroomCommand(string name, string about, string usage, params string[] examples) : Command(name, about)
{
    /// <summary>The words behind the name.</summary>
    public string Usage => usage;

    /// <summary>Lines that work as they stand.</summary>
    public IReadOnlyList<string> Examples => examples;

    /// <summary>More lines at the end of the help, such as exit codes.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>The help of a part that the words name, where the command has parts of its own; null otherwise.</summary>
    public Func<IReadOnlyList<string>, string?>? HelpOf { get; init; }
}
