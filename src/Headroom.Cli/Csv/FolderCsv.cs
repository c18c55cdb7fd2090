using System.Globalization;
using Headroom.Cli.Many;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Csv;

/// <summary>Many jobs as comma-separated values (RFC 4180), one a row below a header.</summary>
internal static class FolderCsv
{
    private static readonly (string Head, Func<StudiedJob, string> Cell)[] Columns =
    [
        ("file", job => CsvCell.Text(job.File)),
        ("name", job => CsvCell.Text(job.Name)),
        ("job", job => CsvCell.Text(job.Job ?? "")),
        ("design", job => CsvCell.Text(job.Design ?? "")),
        ("verdict", job => job.NotWorked is null ? Words.Of(job.Verdict) : "not worked out"),
        ("not_worked", job => CsvCell.Text(job.NotWorked ?? "")),
        ("findings", job => job.Findings.ToString(CultureInfo.InvariantCulture)),
        ("short", job => Count(job, Verdict.Short)),
        ("tight", job => Count(job, Verdict.Tight)),
        ("unknown", job => Count(job, Verdict.Unknown)),
        ("clear", job => Count(job, Verdict.Clear)),
        ("worst", job => CsvCell.Text(job.Worst?.Id ?? "")),
        ("worst_what", job => CsvCell.Text(job.Worst?.What ?? "")),
        ("worst_left", job => CsvCell.Number(job.Worst?.Left)),
        ("worst_unit", job => CsvCell.Text(job.Worst?.Unit ?? "")),
    ];

    /// <summary>Writes header and rows, each ended as the RFC wants it.</summary>
    public static string Write(IReadOnlyList<StudiedJob> jobs) => string.Concat(
        jobs.Select(job => string.Join(',', Columns.Select(column => column.Cell(job)))).Prepend(string.Join(',', Columns.Select(column => column.Head))).Select(line => line + "\r\n"));

    // What was not worked out has no counts, not counts of nothing.
    private static string Count(StudiedJob job, Verdict verdict) =>
        job.NotWorked is null ? job.Count(verdict).ToString(CultureInfo.InvariantCulture) : "";
}
