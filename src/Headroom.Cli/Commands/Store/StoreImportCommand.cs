using Headroom.JobFiles;
using Headroom.JobFiles.Changes;
using Headroom.Store;

namespace Headroom.Cli.Commands.Store;

/// <summary><c>headroom store import JOB...</c>: puts job files into the store as they are, with the sheets beside them.</summary>
internal static class StoreImportCommand
{
    /// <summary>Builds the command.</summary>
    public static HeadroomCommand Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "import", "Puts job files into the store, byte for byte, with the sheets they name", "JOB...", "headroom store import job.yaml", "headroom store import job.yaml --as cobnut-barn")
        {
            Notes = ["Each becomes a job of its own; with --as one becomes the next revision of a job that is there. All that are wrong are said in one go, and then none is put in."],
        };
        var jobs = new WordArgument("a JOB", 1, int.MaxValue).AddTo(command);
        var under = new ValueOption("--as", "ID", "the job of which it is the next revision");
        var (data, by) = (StoreCommand.Data(), StoreCommand.By());
        command.Add(under);
        command.Add(data);
        command.Add(by);
        command.Validators.Add(result =>
        {
            if (result.GetResult(under) is not null && result.GetValue(jobs) is { Length: > 1 })
                result.AddError("--as is for one JOB");
        });
        command.SetAction(parsed =>
        {
            var read = parsed.GetValue(jobs)!.Select(name => Read(JobSource.PathOf(name), desk)).ToList();
            if (read.Contains(null))
                return StoreCommand.Refuse(desk, "nothing was put into the store");
            return StoreCommand.With(data.One(parsed), desk, store => Put(store, [.. read.Select(one => one!.Value)], (under.One(parsed), by.One(parsed) ?? Environment.UserName), desk));
        });
        return command;
    }

    private static int Put(JobStore store, List<(string File, string Name, JobText Text)> jobs, (string? Under, string By) asked, Desk desk)
    {
        foreach (var (file, name, text) in jobs)
        {
            if (asked.Under is null)
            {
                var job = store.Add(name, text, new(asked.By, $"taken over from {Path.GetFileName(file)}"));
                desk.Out.WriteLine($"{file} is job {job.Id}, revision 1{Beside(text)}");
                continue;
            }

            if (store.Find(asked.Under) is not { } before)
                return StoreCommand.Refuse(desk, StoreCommand.NoJob(store, asked.Under));
            var was = store.Read(before.Id, before.Head)!;
            if (was.SameAs(text))
                return StoreCommand.Refuse(desk, $"{file} is what revision {before.Head} of {before.Id} is; nothing was put in");
            var saved = store.Save(before.Id, before.Head, (name, text), new(asked.By, What(was.Text, text.Text, file)));
            if (!saved.Ok)
                return StoreCommand.Refuse(desk, $"somebody else changed {before.Id} at this moment; look at it and try again");
            desk.Out.WriteLine($"{file} is job {before.Id}, revision {saved.Head}{Beside(text)}");
        }

        return ExitCode.NothingShort;
    }

    private static string What(string before, string after, string file) =>
        ChangeWords.Of(JobChanges.Between(before, after)) is { Length: > 0 } words ? words : $"taken over from {Path.GetFileName(file)}";

    private static string Beside(JobText text) => text.Files.Count == 0 ? "" : $", with {string.Join(", ", text.Files.Keys)}";

    private static (string File, string Name, JobText Text)? Read(string file, Desk desk)
    {
        var read = JobSource.Read(file, [], desk, out _);
        foreach (var finding in read.Findings)
            desk.Err.WriteLine(finding.ToString());
        if (!read.Ok)
            return null;
        try
        {
            var bytes = File.ReadAllBytes(file);
            var text = JobText.Of("") with { Bytes = bytes };
            var files = JobFile.SheetsOf(text.Text).ToDictionary(name => name.Replace('\\', '/'), name => (ReadOnlyMemory<byte>)File.ReadAllBytes(Path.Combine(JobFile.FolderOf(file), name)));
            return (file, read.Value!.Name, text with { Files = files });
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
        {
            desk.Err.WriteLine($"headroom: {file} cannot be read whole ({reason.Message.TrimEnd('.')})");
            return null;
        }
    }
}
