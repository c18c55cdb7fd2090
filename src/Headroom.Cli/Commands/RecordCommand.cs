using System.Globalization;
using Headroom.Domain.Catalogues;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary>What the commands share that put one record into a job file.</summary>
internal static class RecordCommand
{
    /// <summary>Keys as they are typed: with a hyphen for a space.</summary>
    public static IEnumerable<string> Keys(IEnumerable<string> keys) => keys.Select(key => key.Replace(' ', '-'));

    /// <summary>Gives a command its words and what it does with them.</summary>
    /// <param name="command">The command.</param>
    /// <param name="desk">What it works at.</param>
    /// <param name="put">Puts the record in; null when it has said itself why not.</param>
    public static HeadroomCommand Complete(HeadroomCommand command, Desk desk, Func<string, IReadOnlyList<KeyValuePair<string, string>>, Catalogue, RecordedJob?> put)
    {
        var words = new WordArgument("a JOB and KEY=VALUE for each thing to be written", 2, int.MaxValue).AddTo(command);
        words.Validators.Add(result =>
        {
            foreach (var token in result.Tokens.Skip(1).Where(token => !token.Value.StartsWith('-') && PairOption.Read(token.Value) is null))
                result.AddError($"{command.Name} takes KEY=VALUE behind the JOB, not '{token.Value}'");
        });
        var own = CatalogueCommand.Own();
        command.Add(own);
        command.SetAction(parsed =>
        {
            var given = parsed.GetValue(words)!;
            var models = JobSource.Models(own.All(parsed));
            if (models is { Ok: true, Value: { } catalogue })
                return Write(JobSource.PathOf(given[0]), put(JobSource.PathOf(given[0]), Fields(given[1..], desk.Today), catalogue), desk);
            FindingsReport.Write(desk.Err, models.Findings);
            return ExitCode.NotWorked;
        });
        return command;
    }

    private static List<KeyValuePair<string, string>> Fields(string[] words, DateOnly today)
    {
        var fields = PairOption.All(words).ToList();
        if (!fields.Exists(pair => pair.Key == "on"))
            fields.Add(KeyValuePair.Create("on", today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
        return fields;
    }

    private static int Write(string job, RecordedJob? recorded, Desk desk)
    {
        if (recorded is null)
            return ExitCode.NotWorked;
        foreach (var finding in recorded.Findings)
            desk.Err.WriteLine(finding.ToString());
        var complaint = recorded is { Before: { } before, Text: { } text } ? JobWriting.Complaint(job, before, text) : $"{FindingsReport.Counts(recorded.Findings)}: {job} is left as it is";
        if (complaint is not null)
        {
            desk.Err.WriteLine($"headroom: {complaint}");
            return ExitCode.NotWorked;
        }

        foreach (var line in Changed(recorded))
            desk.Out.WriteLine(line);
        return ExitCode.NothingShort;
    }

    // The lines that the file did not have before, each with its number.
    private static IEnumerable<string> Changed(RecordedJob recorded)
    {
        var before = recorded.Before!.Split('\n').ToHashSet();
        return recorded.Text!.Split('\n').Select((line, index) => (Line: line, Number: index + 1)).Where(one => !before.Contains(one.Line)).Select(one => $"line {one.Number}: {one.Line.Trim()}");
    }
}
