using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom catalogue check [FILE...]</c>: parse, read, print what was found.</summary>
internal static class CatalogueCheckCommand
{
    /// <summary>Builds the command.</summary>
    public static HeadroomCommand Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "check", "Says whether catalogue files hold together, on top of the shipped models", "[FILE...]", "headroom catalogue check our-models.yaml")
        {
            Notes = ["Without a FILE it checks the shipped models. It ends with 2 when a finding is an error, otherwise with 0."],
        };
        var files = new WordArgument("FILES", 0, int.MaxValue).AddTo(command);
        command.SetAction(parsed => parsed.GetValue(files) is [_, ..] names
            ? CheckReport.Write(desk.Out, string.Join(", ", names), JobSource.Models(names).Findings)
            : CheckReport.Write(desk.Out, "the shipped catalogue", CatalogueFiles.CheckShipped().Findings));
        return command;
    }
}
