using System.CommandLine;
using Headroom.Domain.Ledgers;
using Headroom.Engineering;

namespace Headroom.Cli.Commands;

/// <summary>From a job as named to its ledger. Findings go to the messages; without a ledger there is nothing more to do.</summary>
internal static class Worked
{
    /// <summary>The ledger, or null when something stands in the way; what it is has then been said.</summary>
    public static Ledger? Out(string job, StudyOptions options, ParseResult parsed, Desk desk) =>
        Asked(job, options, parsed, desk) is { } asked ? Study.Run(asked.Job, asked.Models, asked.Request) : null;

    /// <summary>The job, models and request of a command that studies one design, or null when something stands in the way; what it is has then been said.</summary>
    public static AskedStudy? Asked(string job, StudyOptions options, ParseResult parsed, Desk desk)
    {
        var read = JobSource.Read(job, options.Catalogues(parsed), desk, out var models, options.Rates(parsed));
        FindingsReport.Write(desk.Err, read.Findings);
        if (!read.Ok || models is null)
            return null;
        var request = options.Request(parsed, desk.Today);
        if (DesignChoice.Complaint(read.Value!, request) is { } complaint)
        {
            desk.Err.WriteLine($"headroom: {complaint}");
            return null;
        }

        return FirmRecord.Add(request, options.Readings(parsed), desk) is { } whole ? new(read.Value!, models, whole) : null;
    }

    /// <summary>The exit code a ledger comes to.</summary>
    public static int ExitCodeOf(Ledger ledger, bool strict) => ledger.Verdict switch
    {
        Verdict.Short => ExitCode.Short,
        Verdict.Unknown when strict => ExitCode.Short,
        _ => ExitCode.NothingShort,
    };
}
