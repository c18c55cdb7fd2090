using Headroom.Documents.Papers;
using Headroom.Domain.Firms;
using Headroom.Engineering;
using Headroom.JobFiles;

namespace Headroom.Cli.Commands;

/// <summary>From what was asked to what papers are written from.</summary>
internal static class PaperInputs
{
    /// <summary>The studied design; null when the firm offers in another currency than the job, which has then been said.</summary>
    public static PaperInput? Of(AskedStudy asked, (Firm? Firm, ShownUnits Units) shown, Desk desk)
    {
        var results = Study.Results(asked.Job, asked.Models, asked.Request);
        if (shown.Firm is { } firm && FirmFile.OtherCurrency(firm, results.Money?.Currency) is { } clash)
        {
            FindingsReport.Write(desk.Err, [clash]);
            return null;
        }

        return new PaperInput(asked.Job, results, Study.LedgerOf(results, asked.Request)) { Request = asked.Request, Units = shown.Units, Firm = shown.Firm };
    }
}
