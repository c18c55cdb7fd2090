using System.CommandLine;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom overrule JOB entry=ID because=... by=...</c>: sets a verdict aside, with the reason that is kept.</summary>
internal static class OverruleCommand
{
    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "overrule",
            "Sets the verdict of an entry aside in a job, with reason and name, and leaves everything else in the file as it was",
            "JOB KEY=VALUE...",
            "headroom overrule job.yaml entry=field-link/volts because=measured by=J.Marsh")
        {
            Notes = ["The keys are those of an overruling in the job file: " + string.Join(", ", RecordCommand.Keys(JobRecord.OverrulingKeys)) + ". Without 'on' it is today. A reason with spaces stands in quotation marks. The entry must be one of the ledger, or a part of its id that no other has; an overruling of the same entry is replaced."],
        };
        return RecordCommand.Complete(command, desk, (job, fields, models) => Put(job, fields, (models, desk)));
    }

    private static RecordedJob? Put(string job, IReadOnlyList<KeyValuePair<string, string>> fields, (Catalogue Models, Desk Desk) at)
    {
        var entry = fields.FirstOrDefault(pair => pair.Key == "entry").Value;
        var read = JobFile.Read(job, at.Models);
        if (entry is null || !read.Ok)
            return JobRecord.AddOverruling(job, fields, at.Models);
        if (Entry(read.Value!, entry, at) is not { } id)
            return null;
        return JobRecord.AddOverruling(job, [.. fields.Select(pair => pair.Key == "entry" ? KeyValuePair.Create(pair.Key, id) : pair)], at.Models);
    }

    // An overruling holds in every design; so an entry of any of them will do.
    private static string? Entry(Job job, string word, (Catalogue Models, Desk Desk) at)
    {
        string? complaint = null;
        foreach (var design in job.Designs)
        {
            var search = EntrySearch.Find(Study.Run(job, at.Models, new StudyRequest(design.Id, at.Desk.Today, [], null)), word);
            if (search.Id is { } id)
                return id;
            complaint ??= search.Complaint;
        }

        at.Desk.Err.WriteLine(complaint ?? "headroom: the job has no design yet, so it has no entry to overrule");
        return null;
    }
}
