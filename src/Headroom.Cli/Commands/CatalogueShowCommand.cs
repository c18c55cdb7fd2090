using Headroom.Cli.Models;
using Headroom.Domain.Quantities;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom catalogue show MODEL</c>: parse, read, find, print.</summary>
internal static class CatalogueShowCommand
{
    /// <summary>Builds the command.</summary>
    public static HeadroomCommand Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "show", "Shows one model, each value as it was written and with where it comes from", "MODEL", "headroom catalogue show wren-b");
        var id = new WordArgument("a MODEL", 1, 1).AddTo(command);
        var own = CatalogueCommand.Own();
        command.Add(own);
        command.SetAction(parsed => CatalogueCommand.With(own.All(parsed), desk, models => Show(models, parsed.GetValue(id)![0], desk)));
        return command;
    }

    private static int Show(IReadOnlyList<ModelSheet> models, string wanted, Desk desk)
    {
        var found = models.Where(model => model.Id == wanted).ToList();
        if (found.Count > 0)
        {
            desk.Out.Write(ModelText.Show(found, desk.Pen));
            return ExitCode.NothingShort;
        }

        var near = Spelling.Nearest(wanted, models.Select(model => model.Id));
        desk.Err.WriteLine($"headroom: there is no model '{wanted}'; " + (near is null ? "'headroom catalogue list' lists all" : $"did you mean {near}?"));
        return ExitCode.NotWorked;
    }
}
