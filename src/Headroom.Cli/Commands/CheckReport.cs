using Headroom.Domain.Findings;

namespace Headroom.Cli.Commands;

/// <summary>What a check came to: the findings, then one line that sums them up.</summary>
internal static class CheckReport
{
    /// <summary>Writes it and says how the command ends.</summary>
    public static int Write(TextWriter to, string name, IReadOnlyList<Finding> findings)
    {
        foreach (var finding in findings)
            to.WriteLine(finding.ToString());
        var stands = findings.Any(FindingsReport.IsError);
        var counts = FindingsReport.Counts(findings);
        to.WriteLine(counts.Length == 0 ? $"{name}: sound" : stands ? $"{name}: {counts}" : $"{name}: sound, with {counts}");
        return stands ? ExitCode.NotWorked : ExitCode.NothingShort;
    }
}
