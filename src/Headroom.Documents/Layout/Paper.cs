namespace Headroom.Documents.Layout;

/// <summary>A paper: what stands on it, from top to bottom, before anybody knows how many sheets that takes.</summary>
/// <param name="Id">Its name among the papers, also of its file: <c>door-sheet</c>.</param>
/// <param name="Title">Its title.</param>
/// <param name="Blocks">What stands on it.</param>
public sealed record Paper(string Id, string Title, IReadOnlyList<Block> Blocks)
{
    /// <summary>True when it lies on its side.</summary>
    public bool OnItsSide { get; init; }

    /// <summary>True when it is for the firm's own eyes: it may hold costs, margins and notes, and never goes to a client.</summary>
    public bool Inside { get; init; }

    /// <summary>Stands on every sheet at the foot, left: job and design.</summary>
    public string Foot { get; init; } = "";

    /// <summary>The letterhead, on the first sheet; null for none.</summary>
    public Letterhead? Head { get; init; }
}
