using Headroom.Cli.Text;

namespace Headroom.Cli.Commands.Store;

/// <summary><c>headroom store check</c>: says whether the store is sound.</summary>
internal static class StoreCheckCommand
{
    /// <summary>Builds the command.</summary>
    public static HeadroomCommand Build(Desk desk)
    {
        var command = new HeadroomCommand("check", "Says whether everything that was put into the store is there and is what it was", "", "headroom store check")
        {
            Notes = ["It ends with 0 when the store is sound, otherwise with 2; then take a copy that is."],
        };
        new WordArgument("no word", 0, 0).AddTo(command);
        var data = StoreCommand.Data();
        command.Add(data);
        command.SetAction(parsed => StoreCommand.With(data.One(parsed), desk, store =>
        {
            var complaints = store.Check();
            foreach (var complaint in complaints)
                desk.Out.WriteLine(complaint);
            desk.Out.WriteLine(complaints.Count == 0 ? $"{store.Name}: sound, {Words.Count(store.Jobs().Count, "job", "jobs")}" : $"{store.Name}: {Words.Count(complaints.Count, "thing is", "things are")} wrong");
            return complaints.Count == 0 ? ExitCode.NothingShort : ExitCode.NotWorked;
        }));
        return command;
    }
}
