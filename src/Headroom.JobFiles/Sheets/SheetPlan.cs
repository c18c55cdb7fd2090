using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Sheets;

/// <summary>A sheet that is to be read, and what the person says about it.</summary>
/// <param name="File">The file, as it is to be shown.</param>
/// <param name="Kind">What its rows are: one of the words of <c>as</c>.</param>
/// <param name="At">Where this is said; findings about it stand there.</param>
public sealed record SheetPlan(string File, string Kind, Place At)
{
    /// <summary>The word for what stands between cells; null to see for oneself.</summary>
    public string? Separator { get; init; }

    /// <summary>The word for the decimal sign; null to see for oneself.</summary>
    public string? Decimals { get; init; }

    /// <summary>In which order days are written; null to see for oneself.</summary>
    public string? Days { get; init; }

    /// <summary>The encoding; null to see for oneself.</summary>
    public string? Encoding { get; init; }

    /// <summary>The design that cords belong to; null for the chosen one.</summary>
    public string? Design { get; init; }

    /// <summary>The person's headings with the field each becomes, a unit in brackets behind it: <c>length (ft)</c>; <c>none</c> for nothing.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Columns { get; init; } = [];

    /// <summary>The person's names with those of the job or catalogue.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Names { get; init; } = [];

    /// <summary>What holds where a row says nothing, by field.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Otherwise { get; init; } = [];
}
