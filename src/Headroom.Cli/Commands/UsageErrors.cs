using System.CommandLine;
using System.CommandLine.Parsing;
using Headroom.Domain.Quantities;

namespace Headroom.Cli.Commands;

/// <summary>What was typed wrong, in our words, with the nearest right word.</summary>
internal static class UsageErrors
{
    /// <summary>All complaints about what was typed; empty when there are none.</summary>
    public static IReadOnlyList<string> Of(ParseResult parsed)
    {
        if (parsed.CommandResult.Command is { Subcommands.Count: > 0, Action: null } command)
            return [NoSubcommand(command, parsed)];
        return [.. parsed.Errors.Select(error => error.Message).Distinct()];
    }

    /// <summary>The complaint about a command that there is none of.</summary>
    public static string NoCommand(string name)
    {
        if (name.StartsWith('-'))
            return $"a command comes first, then options; '{name}' is none" + Near(name, ["--help", "--version"]);
        return $"there is no command '{name}'" + Near(name, CommandList.All.Select(entry => entry.Name));
    }

    /// <summary>The complaint about an option that a command does not have.</summary>
    public static string NoOption(SymbolResult result, string option)
    {
        var command = CommandOf(result);
        var name = option.Split('=')[0];
        return $"{PathOf(result)} has no option {name}" + Near(name, command.Command.Options.Select(known => known.Name).Append("--help"));
    }

    /// <summary>The words that lead to the command of a result: <c>catalogue show</c>.</summary>
    public static string PathOf(SymbolResult result)
    {
        var command = CommandOf(result);
        return command.Parent is CommandResult above ? $"{PathOf(above)} {command.Command.Name}" : command.Command.Name;
    }

    private static CommandResult CommandOf(SymbolResult result)
    {
        var at = result;
        while (at is not CommandResult)
            at = at.Parent!;
        return (CommandResult)at;
    }

    private static string NoSubcommand(Command command, ParseResult parsed)
    {
        var names = command.Subcommands.Select(sub => sub.Name).ToList();
        return parsed.UnmatchedTokens is [var typed, ..]
            ? $"{command.Name} is followed by {Text.Words.Or(names)}, not '{typed}'" + Near(typed, names)
            : $"{command.Name} is followed by {Text.Words.Or(names)}";
    }

    private static string Near(string word, IEnumerable<string> known) =>
        Spelling.Nearest(word, known) is { } near ? $"; did you mean {near}?" : "";
}
