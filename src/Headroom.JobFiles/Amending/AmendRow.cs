using Headroom.Domain.Findings;
using Headroom.Domain.Tables;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Amending;

/// <summary>One thing of a table with what was changed of it.</summary>
/// <param name="Table">The table.</param>
/// <param name="Design">The design, of a cord; null otherwise.</param>
/// <param name="Key">The name of the thing.</param>
/// <param name="IsNew">True when the job has no such thing.</param>
/// <param name="At">The cell of its name.</param>
internal sealed record AmendRow(BookTable Table, string? Design, string Key, bool IsNew, Place At)
{
    /// <summary>What was changed, by column; of a new thing all that is said.</summary>
    public List<(BookColumn Column, string Before, string? After, SheetCell Cell)> Cells { get; } = [];

    /// <summary>True when its row is gone, and it was named to be taken out.</summary>
    public bool IsGone { get; init; }

    /// <summary>True for a cord that is plugged in nowhere any more.</summary>
    public bool IsUnplugged => Design is not null && !IsNew && Cells.Count == 2 && Cells.TrueForAll(cell => cell.After is null);

    /// <summary>True when its line is to be taken out; otherwise it says <c>none</c>, which takes away what the design has from another.</summary>
    public bool IsTakenOut { get; set; }

    /// <summary>Where it stands in a job file.</summary>
    public IReadOnlyList<string> Path => Design is null ? ["survey", Table.Name] : ["designs", Design, "patch"];
}
