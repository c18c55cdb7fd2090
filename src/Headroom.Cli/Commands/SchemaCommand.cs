using System.CommandLine;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom schema job|catalogue|ledger</c>: prints a JSON Schema.</summary>
internal static class SchemaCommand
{
    private static readonly string[] Kinds = ["job", "catalogue", "ledger"];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "schema",
            "Prints a JSON Schema: of job and catalogue files for an editor, of the ledger for a program",
            "job|catalogue|ledger",
            "headroom schema job");
        var kind = new WordArgument("job, catalogue or ledger", 1, 1).AddTo(command);
        kind.Validators.Add(result =>
        {
            if (result.Tokens is [var only] && !only.Value.StartsWith('-') && ValueOption.Complaint(only.Value, Kinds) is { } complaint)
                result.AddError($"schema {complaint}");
        });
        command.SetAction(parsed =>
        {
            desk.Out.Write(Text(parsed.GetValue(kind)![0]).TrimEnd() + "\n");
            return ExitCode.NothingShort;
        });
        return command;
    }

    private static string Text(string kind) => kind switch
    {
        "job" => Schemas.Job(),
        "catalogue" => Schemas.Catalogue(),
        _ => Embedded.Text("ledger.schema.json"),
    };
}
