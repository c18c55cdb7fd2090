using Headroom.Cli.Models;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom catalogue list [KIND]</c>: parse, read, choose, print.</summary>
internal static class CatalogueListCommand
{
    /// <summary>Builds the command.</summary>
    public static HeadroomCommand Build(Desk desk)
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
        var own = CatalogueCommand.Own();
        command.Add(where);
        command.Add(own);
        command.SetAction(parsed => CatalogueCommand.With(own.All(parsed), desk, models =>
        {
            var ofKind = parsed.GetValue(kind) is [var only] ? models.Where(model => model.Kind == only) : models;
            var chosen = where.One(parsed) is { } text ? ofKind.Where(model => model.Holds(text)) : ofKind;
            desk.Out.Write(ModelText.List([.. chosen], desk.Pen));
            return ExitCode.NothingShort;
        }));
        return command;
    }
}
