using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;
using Headroom.Engineering;
using Headroom.JobFiles;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Files;

namespace Headroom.Cli.Commands;

/// <summary>Puts the designs of a plan into its job file.</summary>
internal static class PlanWriting
{
    /// <summary>Writes them all, or none; says what stands in the way, or null when they are written.</summary>
    public static string? Complaint(string job, Job read, Plan plan, string? today, Desk desk)
    {
        if (job == "-")
            return "standard input cannot be written to; name a file";
        var before = TextFile.Read(job);
        if (before.Value is not { } text)
            return $"{job} cannot be read again";
        var like = Study.DesignOf(read, today);
        foreach (var proposal in plan.Proposals)
        {
            var edit = JobFileEditor.PutDesign(text, proposal.Design.Id, WholeDesignText.Of(proposal.Design, like is { Fittings.Count: > 0 } ? like : null));
            if (edit.Text is null)
                return string.Join("; ", edit.Findings.Select(finding => finding.ToString()));
            text = edit.Text;
        }

        var models = JobSource.Models([]);
        var again = JobFile.Parse(text, job, null);
        if (!again.Ok || models.Value is null)
            return $"the designs do not hold together in {job}, which is left as it is: {again.Findings.FirstOrDefault(FindingsReport.IsError)}";
        if (JobWriting.Complaint(job, before.Value, text) is { } complaint)
            return complaint;
        desk.Err.WriteLine($"written into {job}: {string.Join(", ", plan.Proposals.Select(proposal => proposal.Design.Id))}");
        return null;
    }
}
