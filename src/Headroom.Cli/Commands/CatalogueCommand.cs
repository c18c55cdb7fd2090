using System.CommandLine;
using Headroom.Cli.Models;
using Headroom.Domain.Quantities;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom catalogue list|show|check</c>: the models a job may use.</summary>
internal static class CatalogueCommand
{
    /// <summary>Builds the command with its three parts.</summary>
    public static Command Build(Desk desk) =>
        new HeadroomCommand("catalogue", "Shows the models a job may use, or checks a firm's own", "list|show|check", "headroom catalogue list switches")
        {
            List(desk),
            Show(desk),
            Check(desk),
        };

    private static HeadroomCommand List(Desk desk)
    {
        var command = new HeadroomCommand(
            "list", "Lists models, all or those of one kind", "[KIND]", "headroom catalogue list switches --where 2.5");
        var kind = new WordArgument("one KIND", 0, 1).AddTo(command);
        kind.Validators.Add(result =>
        {
            if (result.Tokens is [var only] && !only.Value.StartsWith('-') && ValueOption.Complaint(only.Value, ModelSheet.Kinds) is { } complaint)
                result.AddError($"a kind {complaint}");
        });
        var where = new ValueOption("--where", "TEXT", "only those that have the text in name, description or figures");
        var own = Own();
        command.Add(where);
        command.Add(own);
        command.SetAction(parsed => With(own.All(parsed), desk, models =>
        {
            var sheets = models.Where(model => parsed.GetValue(kind) is not [var only] || model.Kind == only).Where(model => where.One(parsed) is not { } text || model.Holds(text));
            desk.Out.Write(ModelText.List([.. sheets], desk.Pen));
            return ExitCode.NothingShort;
        }));
        return command;
    }

    private static HeadroomCommand Show(Desk desk)
    {
        var command = new HeadroomCommand("show", "Shows one model, each value as it was written and with where it comes from", "MODEL", "headroom catalogue show wren-b");
        var id = new WordArgument("a MODEL", 1, 1).AddTo(command);
        var own = Own();
        command.Add(own);
        command.SetAction(parsed => With(own.All(parsed), desk, models =>
        {
            var wanted = parsed.GetValue(id)![0];
            var found = models.Where(model => model.Id == wanted).ToList();
            if (found.Count == 0)
            {
                var near = Spelling.Nearest(wanted, models.Select(model => model.Id)) is { } word ? $"; did you mean {word}?" : "; 'headroom catalogue list' lists all";
                desk.Err.WriteLine($"headroom: there is no model '{wanted}'{near}");
                return ExitCode.NotWorked;
            }

            desk.Out.Write(ModelText.Show(found, desk.Pen));
            return ExitCode.NothingShort;
        }));
        return command;
    }

    private static HeadroomCommand Check(Desk desk)
    {
        var command = new HeadroomCommand("check", "Says whether catalogue files hold together, on top of the shipped models", "[FILE...]", "headroom catalogue check our-models.yaml")
        {
            Notes = ["Without a FILE it checks the shipped models. It ends with 2 when a finding is an error, otherwise with 0."],
        };
        var files = new WordArgument("FILES", 0, int.MaxValue).AddTo(command);
        command.SetAction(parsed =>
        {
            var names = parsed.GetValue(files) ?? [];
            return names.Length == 0
                ? CheckReport.Write(desk.Out, "the shipped catalogue", CatalogueFiles.CheckShipped().Findings)
                : CheckReport.Write(desk.Out, string.Join(", ", names), JobSource.Models(names).Findings);
        });
        return command;
    }

    private static ValueOption Own() => new("--catalogue", "FILE", "your own models, over those shipped; may be repeated", often: true);

    private static int With(string[] own, Desk desk, Func<IReadOnlyList<ModelSheet>, int> show)
    {
        var models = JobSource.Models(own);
        FindingsReport.Write(desk.Err, models.Findings);
        return models.Ok ? show(ModelSheet.All(models.Value!)) : ExitCode.NotWorked;
    }
}
