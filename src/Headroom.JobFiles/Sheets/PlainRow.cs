using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Sheets;

/// <summary>A row of a sheet that goes into no job, with what its cells say by field.</summary>
/// <param name="Row">The row.</param>
/// <param name="Said">What its cells say, as a job file would write it; without those of which nobody knows anything.</param>
/// <param name="Cells">The cells in which something stands, known or not.</param>
internal sealed record PlainRow(SheetRow Row, IReadOnlyDictionary<string, string> Said, IReadOnlyDictionary<string, SheetCell> Cells)
{
    /// <summary>What a field says; null when nothing.</summary>
    public string? Of(string field) => Said.GetValueOrDefault(field);

    /// <summary>Where a field stands; the row when it has no cell.</summary>
    public Place At(string field) => Cells.TryGetValue(field, out var cell) ? cell.At : Row.At;
}
