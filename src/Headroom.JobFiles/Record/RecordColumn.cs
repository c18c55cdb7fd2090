using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Record;

/// <summary>A column of a sheet of the firm's record, with what the manual says of it.</summary>
/// <param name="Field">The column.</param>
/// <param name="Doc">What it is.</param>
/// <param name="Allowed">What may stand in it.</param>
/// <param name="Example">A cell.</param>
internal sealed record RecordColumn(SheetField Field, string Doc, string Allowed, string Example);
