using System.CommandLine;
using Headroom.Cli.Commands;

namespace Headroom.Cli;

/// <summary>From the words typed to an exit code: finds the command, refuses what it does not understand, and catches what nobody foresaw.</summary>
internal static class Shell
{
    /// <summary>Runs the command that was typed.</summary>
    public static int Run(string[] args, Desk desk)
    {
        var code = ExitCode.NothingShort;
        try
        {
            code = Dispatch(args, desk);
            desk.Err.Flush();
            desk.Out.Flush();
            return code;
        }
        catch (IOException) when (OutIsClosed(desk))
        {
            // Whoever read has read enough: nothing to complain about, and nobody to complain to.
            return code;
        }
        catch (Exception fault)
        {
            return Apologise(fault, desk);
        }
    }

    private static int Dispatch(string[] args, Desk desk)
    {
        if (args is [])
            return HelpPage.WriteAll(desk.Err, ExitCode.NotWorked);
        if (args is ["--version"])
            return Print(desk, Version + "\n");
        if (args is ["--help" or "-h" or "help"])
            return HelpPage.WriteAll(desk.Out, ExitCode.NothingShort);
        var asksForHelp = args[0] == "help";
        var name = asksForHelp ? args[1] : args[0];
        if (CommandList.Find(name) is not { } command)
            return Refuse(desk, [UsageErrors.NoCommand(name)], "headroom --help");
        if (!asksForHelp && args is [_, { Length: > 0 } word] && (word == "-" || word[0] != '-') && command.OfOneWord is { } run)
            return run(word, desk);
        string[] rest = asksForHelp ? [.. args[2..], "--help"] : args[1..];
        return Invoke(command.Build(desk), rest, desk);
    }

    private static int Invoke(Command command, string[] words, Desk desk)
    {
        // No response files and no bundles of letters: a file name may begin with @, and every option has a whole word.
        var parsed = command.Parse(words, new ParserConfiguration { ResponseFileTokenReplacer = null, EnablePosixBundling = false });
        if (Array.Exists(words, word => word is "--help" or "-h"))
            return (parsed.CommandResult.Command as HeadroomCommand)?.HelpOf?.Invoke(words) is { } part ? Print(desk, part) : HelpPage.Write(desk.Out, parsed.CommandResult.Command);
        var errors = UsageErrors.Of(parsed);
        return errors.Count > 0
            ? Refuse(desk, errors, $"headroom {UsageErrors.PathOf(parsed.CommandResult)} --help")
            : parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = desk.Out, Error = desk.Err });
    }

    private static int Refuse(Desk desk, IEnumerable<string> errors, string help)
    {
        foreach (var error in errors)
            desk.Err.WriteLine($"headroom: {error}");
        desk.Err.WriteLine($"'{help}' says what there is.");
        return ExitCode.NotWorked;
    }

    private static int Print(Desk desk, string text)
    {
        desk.Out.Write(text);
        return ExitCode.NothingShort;
    }

    private static string Version => $"headroom {typeof(Shell).Assembly.GetName().Version?.ToString(3)}";

    private static bool OutIsClosed(Desk desk)
    {
        try
        {
            desk.Out.Flush();
            return false;
        }
        catch (IOException)
        {
            return true;
        }
    }

    private static int Apologise(Exception fault, Desk desk)
    {
        desk.Err.WriteLine($"headroom: this is a fault of headroom itself, not of the job ({fault.GetType().Name}). Nothing was worked out.");
        if (Environment.GetEnvironmentVariable("HEADROOM_TRACE") == "1")
            desk.Err.WriteLine(fault.ToString());
        else
            desk.Err.WriteLine("With HEADROOM_TRACE=1 it says where; please send that with the job to whoever keeps headroom.");
        desk.Err.Flush();
        return ExitCode.NotWorked;
    }
}
