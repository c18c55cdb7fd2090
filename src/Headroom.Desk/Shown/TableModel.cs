using Headroom.Domain.Findings;
using Headroom.JobFiles.Changes;

namespace Headroom.Desk.Shown;

/// <summary>A table in a form, with what is wrong or was decided.</summary>
/// <param name="Columns">The columns shown.</param>
/// <param name="More">Columns that are not shown, since nothing stands in them.</param>
/// <param name="Rows">The rows.</param>
public sealed record TableModel(IReadOnlyList<JobColumn> Columns, IReadOnlyList<JobColumn> More, IReadOnlyList<SurveyRow> Rows)
{
    /// <summary>Findings that belong to no cell shown.</summary>
    public IReadOnlyList<Finding> Loose { get; init; } = [];

    /// <summary>Fields that somebody else changed too.</summary>
    public IReadOnlyList<(FieldChange Mine, FieldChange Theirs)> Clash { get; init; } = [];

    /// <summary>What may stand in a column, by its key.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Lists { get; init; } = new Dictionary<string, IReadOnlyList<string>>();

    /// <summary>What is taken away of the design that this one is like.</summary>
    public IReadOnlyList<string> Gone { get; init; } = [];

    /// <summary>The design that all rows are taken over from; null when they are written here.</summary>
    public string? AllFrom { get; init; }

    /// <summary>What has just been done; null for nothing.</summary>
    public string? Notice { get; init; }

    /// <summary>True when something stands in the way of saving.</summary>
    public bool IsRefused => Loose.Count > 0 || Clash.Count > 0 || Rows.Any(row => row.Wrong.Count > 0);
}
