using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Record;

/// <summary>A sheet of the firm's record.</summary>
/// <param name="File">Its name in the folder.</param>
/// <param name="About">What its rows are, for the manual.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Kind">The same as the reader of sheets wants it.</param>
internal sealed record RecordSheet(string File, string About, IReadOnlyList<RecordColumn> Columns, SheetKind Kind)
{
    private static readonly SheetField Remark = new(
        "remark", CellKind.Aside, "note", "notes", "remark", "remarks", "comment", "comments", "bemerkung", "remarque", "serial", "serial number", "s/n", "seriennummer", "no", "no.", "nr", "nr.", "#", "by", "operator", "client", "cause", "symptom");

    /// <summary>A sheet of columns.</summary>
    /// <param name="named">File name, noun of a row and what the rows are.</param>
    /// <param name="columns">The columns.</param>
    /// <param name="needs">The columns without which it is none.</param>
    public static RecordSheet Of((string File, string Noun, string About) named, RecordColumn[] columns, params string[][] needs) => new(
        named.File, named.About, columns, new SheetKind(named.File, named.Noun, [.. columns.Select(column => column.Field), Remark], needs) { Section = [], MayBeEmpty = true });
}
