using System.CommandLine;
using Headroom.Documents.Papers;
using Headroom.Domain.Firms;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary>The option that names the firm's own file.</summary>
internal sealed class FirmOption() : ValueOption("--firm", "FILE", "your firm, for the head of papers (docs/firm.md)")
{
    /// <summary>Reads the file; what is wrong has then been said.</summary>
    /// <param name="parsed">What was typed.</param>
    /// <param name="desk">Where to say it.</param>
    /// <param name="firm">The firm; null when none was named.</param>
    /// <returns>False when something stands in the way.</returns>
    public bool TryRead(ParseResult parsed, Desk desk, out Firm? firm)
    {
        firm = null;
        if (One(parsed) is not { } file)
            return true;
        var read = FirmFile.Read(file);
        FindingsReport.Write(desk.Err, read.Findings);
        if (!read.Ok)
            return false;
        firm = read.Value!;
        if (FirmOnPapers.Complaint(firm) is not { } complaint)
            return true;
        desk.Err.WriteLine($"headroom: the picture that {file} names cannot be drawn: {complaint}; save it again as an ordinary PNG");
        return false;
    }
}
