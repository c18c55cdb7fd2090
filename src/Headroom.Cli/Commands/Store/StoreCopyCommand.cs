namespace Headroom.Cli.Commands.Store;

/// <summary><c>headroom store copy FILE</c>: a backup, while others go on working.</summary>
internal static class StoreCopyCommand
{
    /// <summary>Builds the command.</summary>
    public static HeadroomCommand Build(Desk desk)
    {
        var command = new HeadroomCommand("copy", "Writes the whole store as it is at this moment into one file, while others go on working", "FILE", "headroom store copy backup.db")
        {
            Notes = ["The file is a store of its own: put it into an empty data folder as headroom.db. Of a PostgreSQL server it makes such a file too."],
        };
        var file = new WordArgument("a FILE", 1, 1).AddTo(command);
        var data = StoreCommand.Data();
        command.Add(data);
        command.SetAction(parsed => StoreCommand.With(data.One(parsed), desk, store =>
        {
            var target = parsed.GetValue(file)![0];
            store.CopyTo(target);
            desk.Out.WriteLine($"{target}: a copy of {store.Name}");
            return ExitCode.NothingShort;
        }));
        return command;
    }
}
