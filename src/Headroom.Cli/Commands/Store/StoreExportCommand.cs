using System.Globalization;
using Headroom.Store;

namespace Headroom.Cli.Commands.Store;

/// <summary><c>headroom store export ID --out DIR</c>: takes a job out as the files it came as.</summary>
internal static class StoreExportCommand
{
    private const string JobName = "job.yaml";

    /// <summary>Builds the command.</summary>
    public static HeadroomCommand Build(Desk desk)
    {
        var command = new HeadroomCommand("export", "Takes a job out of the store, byte for byte, with its sheets", "ID", "headroom store export cobnut-barn --out barn", "headroom store export cobnut-barn --revision 3")
        {
            Notes = ["Without --out the job file is printed. A file that is there is never written over."],
        };
        var id = new WordArgument("an ID", 1, 1).AddTo(command);
        var revision = new ValueOption("--revision", "N", "the revision; otherwise the last").Checked(given =>
            int.TryParse(given, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0 ? null : $"is the number of a revision, from 1, not '{given}'");
        var into = new ValueOption("--out", "DIR", $"the folder for {JobName} and the sheets; made when it is not there");
        var data = StoreCommand.Data();
        command.Add(revision);
        command.Add(into);
        command.Add(data);
        command.SetAction(parsed => StoreCommand.With(data.One(parsed), desk, store =>
        {
            var wanted = parsed.GetValue(id)![0];
            if (store.Find(wanted) is not { } job)
                return StoreCommand.Refuse(desk, StoreCommand.NoJob(store, wanted));
            var number = revision.One(parsed) is { } given ? int.Parse(given, CultureInfo.InvariantCulture) : job.Head;
            if (store.Read(job.Id, number) is not { } text)
                return StoreCommand.Refuse(desk, $"{job.Id} has no revision {number}; its last is {job.Head}");
            if (into.One(parsed) is { } folder)
                return Write(text, folder, desk);
            desk.Out.Write(text.Text);
            return ExitCode.NothingShort;
        }));
        return command;
    }

    private static int Write(JobText text, string folder, Desk desk)
    {
        var files = text.Files.Select(file => (Path: Path.Combine(folder, file.Key), file.Value)).Prepend((Path: Path.Combine(folder, JobName), text.Bytes)).ToList();
        if (files.Find(file => Path.Exists(file.Path)) is { Path: { } taken })
            return StoreCommand.Refuse(desk, $"{taken} is there already and is left as it is; name another folder");
        try
        {
            foreach (var (path, bytes) in files)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
                using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
                stream.Write(bytes.Span);
                desk.Out.WriteLine(path);
            }

            return ExitCode.NothingShort;
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return StoreCommand.Refuse(desk, $"{folder} cannot be written to ({reason.Message.TrimEnd('.')})");
        }
    }
}
