using Headroom.JobFiles.Changes;

namespace Headroom.Desk.Shown;

/// <summary>A drawing with its movable things as a page shows it.</summary>
/// <param name="Path">The end of the address to which its form is sent.</param>
/// <param name="Query">The query of that address; empty for none.</param>
/// <param name="Pictures">The drawings.</param>
/// <param name="Things">The things.</param>
/// <param name="Now">What was moved, as it goes with the page.</param>
/// <param name="Before">The moves, as they go with the page; empty when there were none.</param>
public sealed record MoveSheet(string Path, string Query, IReadOnlyList<MovePicture> Pictures, IReadOnlyList<MoveThing> Things, string Now, string Before)
{
    /// <summary>What was moved, in words.</summary>
    public IReadOnlyList<string> Moved { get; init; } = [];

    /// <summary>Moved things at which something was measured: where they were.</summary>
    public IReadOnlyList<string> Measured { get; init; } = [];

    /// <summary>The entries of the ledger that are otherwise, the worst first.</summary>
    public IReadOnlyList<EntryEffect> Effects { get; init; } = [];

    /// <summary>Why something was not moved that belongs to no thing shown, in sentences.</summary>
    public IReadOnlyList<string> Loose { get; init; } = [];

    /// <summary>Fields that somebody else changed too.</summary>
    public IReadOnlyList<(FieldChange Mine, FieldChange Theirs)> Clash { get; init; } = [];

    /// <summary>What has just been done, or what others did; null for nothing.</summary>
    public string? Notice { get; init; }

    /// <summary>True when a move was refused.</summary>
    public bool IsRefused => Loose.Count > 0 || Clash.Count > 0 || Things.Any(thing => thing.Slip is not null);

    /// <summary>Values that fields may take, by the name of the list.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<(string Value, string About)>> Lists { get; init; } = new Dictionary<string, IReadOnlyList<(string, string)>>();
}
