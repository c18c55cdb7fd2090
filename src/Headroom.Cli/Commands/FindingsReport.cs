using Headroom.Cli.Text;
using Headroom.Domain.Findings;

namespace Headroom.Cli.Commands;

/// <summary>Writes findings, one a line, and counts them.</summary>
internal static class FindingsReport
{
    /// <summary>Writes them; when one is an error, a closing line says that nothing was worked out.</summary>
    public static void Write(TextWriter to, IReadOnlyList<Finding> findings)
    {
        foreach (var finding in findings)
            to.WriteLine(finding.ToString());
        if (findings.Any(IsError))
            to.WriteLine($"{Counts(findings)}: nothing was worked out");
    }

    /// <summary>How many there are: <c>2 errors, 1 question</c>; empty when there are none.</summary>
    public static string Counts(IReadOnlyList<Finding> findings)
    {
        var errors = findings.Count(IsError);
        var questions = findings.Count - errors;
        string[] counts = [Some(errors, "error", "errors"), Some(questions, "question", "questions")];
        return string.Join(", ", counts.Where(count => count.Length > 0));
    }

    /// <summary>Whether a finding stands in the way.</summary>
    public static bool IsError(Finding finding) => finding.Severity == Severity.Error;

    private static string Some(int count, string one, string many) => count == 0 ? "" : Words.Count(count, one, many);
}
