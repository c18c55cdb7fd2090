using System.CommandLine;
using Headroom.Cli.Models;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom catalogue list|show|check</c>: the models a job may use.</summary>
internal static class CatalogueCommand
{
    /// <summary>Builds the command with its three parts.</summary>
    public static Command Build(Desk desk) =>
        new HeadroomCommand("catalogue", "Shows the models a job may use, or checks a firm's own", "list|show|check", "headroom catalogue list switches")
        {
            CatalogueListCommand.Build(desk),
            CatalogueShowCommand.Build(desk),
            CatalogueCheckCommand.Build(desk),
        };

    /// <summary>The option that names the firm's own models.</summary>
    public static ValueOption Own() => new("--catalogue", "FILE", "your own models, over those shipped; may be repeated", often: true);

    /// <summary>Does something with all models, when they can be read.</summary>
    public static int With(string[] own, Desk desk, Func<IReadOnlyList<ModelSheet>, int> show)
    {
        var models = JobSource.Models(own);
        FindingsReport.Write(desk.Err, models.Findings);
        return models.Ok ? show(ModelSheet.All(models.Value!)) : ExitCode.NotWorked;
    }
}
