using System.CommandLine;
using Headroom.Cli.Text;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom schema KIND</c>: prints a JSON Schema.</summary>
internal static class SchemaCommand
{
    private static readonly string[] Kinds = ["job", "catalogue", "firm", "ledger", "reckon", "compare", "jobs", "record", "remedies", "restart", "years", "acceptance", "plan", "turn"];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "schema",
            "Prints a JSON Schema: of job, catalogue and firm files for an editor, of what a command writes for a program",
            string.Join('|', Kinds),
            "headroom schema job");
        var kind = new WordArgument(Words.Or(Kinds), 1, 1).AddTo(command);
        kind.Validators.Add(result =>
        {
            if (result.Tokens is [var only] && !only.Value.StartsWith('-') && ValueOption.Complaint(only.Value, Kinds) is { } complaint)
                result.AddError($"schema {complaint}");
        });
        command.SetAction(parsed =>
        {
            desk.Out.Write(TextOf(parsed.GetValue(kind)![0]).TrimEnd() + "\n");
            return ExitCode.NothingShort;
        });
        return command;
    }

    private static string TextOf(string kind) => kind switch
    {
        "job" => Schemas.Job(),
        "catalogue" => Schemas.Catalogue(),
        "firm" => Schemas.Firm(),
        _ => Embedded.Text($"{kind}.schema.json"),
    };
}
