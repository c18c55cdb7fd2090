using Headroom.Cli.Text;
using Headroom.Engineering.Years;

namespace Headroom.Cli.Csv;

/// <summary>What happens over the years as comma-separated values (RFC 4180): what turns and what is due, in order of time.</summary>
internal static class YearsCsv
{
    private const string Head = "on,event,subject,id,what,before,verdict,left_before,left,unit,why";

    /// <summary>Writes header and rows, each ended as the RFC wants it; what has no day yet comes last.</summary>
    public static string Write(YearsResult result) => string.Concat(
        result.Turns.Select(turn => (On: (DateOnly?)turn.On, Row: Row(turn))).Concat(result.Dues.Select(due => (due.On, Row: Row(due))))
            .OrderBy(row => row.On is null).ThenBy(row => row.On).Select(row => row.Row).Prepend(Head).Select(line => line + "\r\n"));

    private static string Row(Turn turn) => string.Join(
        ',',
        YearWords.Plain(turn.On), "turn", CsvCell.Text(turn.Entry.Subject), CsvCell.Text(turn.Entry.Id), CsvCell.Text(turn.Entry.What),
        turn.Before is { } before ? Words.Of(before) : "", Words.Of(turn.Entry.Verdict), CsvCell.Number(turn.LeftBefore), CsvCell.Number(turn.Entry.Left),
        CsvCell.Text(turn.Entry.Unit), CsvCell.Text(YearWords.Why(turn)));

    private static string Row(DueDate due) => string.Join(
        ',',
        due.On is { } on ? YearWords.Plain(on) : "", "due", CsvCell.Text(due.Subject), "", CsvCell.Text(due.What), "", "", "", "", "", CsvCell.Text(due.Question ?? due.Origin));
}
