using System.Globalization;
using Headroom.Cli.Text;

namespace Headroom.Cli.Commands.Store;

/// <summary><c>headroom store list</c>: the jobs in the store, or the revisions of one.</summary>
internal static class StoreListCommand
{
    private const int WidestId = 30;

    /// <summary>Builds the command.</summary>
    public static HeadroomCommand Build(Desk desk)
    {
        var command = new HeadroomCommand("list", "Lists the jobs in the store, the one changed last first, or the revisions of one", "[ID]", "headroom store list");
        var id = new WordArgument("one ID", 0, 1).AddTo(command);
        var data = StoreCommand.Data();
        command.Add(data);
        command.SetAction(parsed => StoreCommand.With(data.One(parsed), desk, store =>
        {
            var page = new Page(desk.Pen);
            if (parsed.GetValue(id) is [var wanted])
            {
                if (store.Find(wanted) is null)
                    return StoreCommand.Refuse(desk, StoreCommand.NoJob(store, wanted));
                foreach (var revision in store.Revisions(wanted))
                    page.Labelled(revision.Number.ToString(CultureInfo.InvariantCulture), $"{Day(revision.At)}, {revision.By}: {revision.What}", 2, 5);
            }
            else if (store.Jobs() is { Count: > 0 } jobs)
            {
                var table = new TextTable("job", "revision", "changed", "by", "name") { TextAtEnd = 3, WidestFirst = WidestId };
                foreach (var job in jobs)
                    table.Add(job.Id, job.Head.ToString(CultureInfo.InvariantCulture), Day(job.Changed), job.By, job.Name);
                table.Write(page);
            }
            else
            {
                page.Line("There is no job in it yet. Put one in: headroom store import job.yaml");
            }

            desk.Out.Write(page.ToString());
            return ExitCode.NothingShort;
        }));
        return command;
    }

    private static string Day(DateTimeOffset at) => at.ToString("d MMM yyyy HH:mm'Z'", CultureInfo.InvariantCulture);
}
