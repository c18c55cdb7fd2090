using Headroom.Documents.Drawings;
using Headroom.Documents.Layout;

namespace Headroom.Documents.Papers;

/// <summary>A paper that can be asked for.</summary>
/// <param name="Id">Its name, also of its file.</param>
/// <param name="Title">Its title.</param>
/// <param name="For">For whom it is: <c>client</c>, <c>site</c>, <c>bench</c>, <c>keeps</c> or <c>inside</c>.</param>
/// <param name="Blocks">What stands on it; null when the job has nothing for it.</param>
public sealed record PaperKind(string Id, string Title, string For, Func<PaperInput, IReadOnlyList<Block>?> Blocks)
{
    /// <summary>True when it lies on its side.</summary>
    public bool OnItsSide { get; init; }

    /// <summary>Lays out what is more than one paper; null for one that is laid out as it stands.</summary>
    public Func<Paper, PaperInput, SheetSize, IReadOnlyList<LaidSheet>>? Sheets { get; init; }

    /// <summary>Writes what has no sheets, such as a file for a spreadsheet; null when the job has nothing for it, and for a paper.</summary>
    public Func<PaperInput, WrittenPaper?>? AsFile { get; init; }

    /// <summary>What the planner has to work out first; empty for a paper that is written from a study.</summary>
    public IReadOnlyList<PlannedFor> Needs { get; init; } = [];

    /// <summary>Why it is left out when there is nothing for it: what the job would have to say.</summary>
    public string Without { get; init; } = "the job says nothing about it";

    /// <summary>The paper for a job; null when there is nothing for it.</summary>
    /// <param name="input">The studied design.</param>
    public Paper? Of(PaperInput input) => Blocks(input) is { Count: > 0 } blocks
        ? new Paper(Id, Title, blocks) { OnItsSide = OnItsSide, Inside = For == "inside", Foot = input.Foot, Head = For is "client" or "keeps" ? input.Head : input.Head is { } head ? head with { Lines = [] } : null }
        : null;
}
