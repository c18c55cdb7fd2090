using Headroom.Domain.Catalogues;

namespace Headroom.JobFiles;

/// <summary>How the sheets of a firm's record are to be read.</summary>
/// <param name="Catalogue">The models that are known.</param>
/// <param name="On">The day of the study; nothing in the record is later.</param>
/// <param name="HotCelsius">From which air on a place counts as hot [°C].</param>
public sealed record RecordPlan(Catalogue Catalogue, DateOnly On, double HotCelsius)
{
    /// <summary>Headings with the field each becomes, the sheet in front: <c>fleet.csv/Built</c> and <c>installed</c>.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Columns { get; init; } = [];

    /// <summary>The word for the decimal sign; null to see for oneself.</summary>
    public string? Decimals { get; init; }

    /// <summary>In which order days are written; null to see for oneself.</summary>
    public string? Days { get; init; }
}
