namespace Headroom.Documents.Labels;

/// <summary>What one label says.</summary>
/// <param name="Kind">What it is put on: one of the kinds of <see cref="LabelPlan"/>.</param>
/// <param name="Id">The name, letter for letter as it stands in the schedules.</param>
/// <param name="Also">Smaller lines below it; one that does not fit is left out whole.</param>
public sealed record LabelText(string Kind, string Id, IReadOnlyList<string> Also)
{
    /// <summary>What its code says: the name; null where it has letters that readers of codes guess at.</summary>
    public string? Code => Id.All(char.IsAscii) ? Id : null;
}
