using System.CommandLine;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom note JOB KEY=VALUE...</c>: puts a reading into a job file.</summary>
internal static class NoteCommand
{
    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "note",
            "Writes down in a job what was measured, and leaves everything else in the file as it was",
            "JOB KEY=VALUE...",
            "headroom note job.yaml what=watts at=sw-1/5 value=6.4W with=meter while=night")
        {
            Notes = ["The keys are those of a reading in the job file: " + string.Join(", ", RecordCommand.Keys(JobRecord.ReadingKeys)) + ". Without 'on' it is today. A value with spaces stands in quotation marks: value=\"6.4 ± 0.2 W\". Nothing is written when the job would not hold together with it."],
        };
        return RecordCommand.Complete(command, desk, (job, fields, models) => JobRecord.AddReading(job, fields, models));
    }
}
