using System.CommandLine;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom new FILE</c>: writes a first job, never over a file that is there.</summary>
internal static class NewCommand
{
    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "new",
            "Writes a first job file, with remarks, that can be studied as it stands",
            "[FILE]",
            "headroom new job.yaml")
        {
            Notes = ["Without FILE, or with -, it is printed. A file that is there is never written over."],
        };
        var file = new WordArgument("one FILE", 0, 1).AddTo(command);
        command.SetAction(parsed => Write(parsed.GetValue(file) is [var name] && name != "-" ? name : null, desk));
        return command;
    }

    private static int Write(string? name, Desk desk)
    {
        var text = Embedded.Text("first-job.yaml");
        if (name is null)
        {
            desk.Out.Write(text);
            return ExitCode.NothingShort;
        }

        if (NewFile.Complaint(name, text) is { } complaint)
        {
            desk.Err.WriteLine($"headroom: {complaint}");
            return ExitCode.NotWorked;
        }

        desk.Out.WriteLine($"{name} is written. Next: headroom study {Cli.Text.Words.Quoted(name)}");
        return ExitCode.NothingShort;
    }
}
