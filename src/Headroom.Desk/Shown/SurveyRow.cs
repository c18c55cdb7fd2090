namespace Headroom.Desk.Shown;

/// <summary>A row of a survey table as it stands in a form.</summary>
/// <param name="Name">Its name or range.</param>
/// <param name="Cells">What stands or was typed in each column.</param>
/// <param name="IsNew">True for an empty row to be filled.</param>
public sealed record SurveyRow(string Name, IReadOnlyDictionary<string, string> Cells, bool IsNew)
{
    /// <summary>True when each of its keys can be changed here.</summary>
    public bool IsPlain { get; init; } = true;

    /// <summary>The design it is taken over from; null when it is written where it is shown.</summary>
    public string? From { get; init; }

    /// <summary>True when it is to be taken out.</summary>
    public bool Out { get; init; }

    /// <summary>What is wrong, by column; under the empty key for the row as a whole.</summary>
    public IReadOnlyDictionary<string, string> Wrong { get; init; } = new Dictionary<string, string>();
}
