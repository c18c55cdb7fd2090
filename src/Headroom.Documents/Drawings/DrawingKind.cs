using Headroom.Documents.Canvas;
using Headroom.Documents.Papers;

namespace Headroom.Documents.Drawings;

/// <summary>A kind of drawing that can be asked for.</summary>
/// <param name="Id">Its name.</param>
/// <param name="About">What it shows.</param>
/// <param name="Subjects">Of which things of a design it can be drawn, by id; the empty id where it is of the design as a whole.</param>
/// <param name="Draw">Draws it of one of these; null when the job has nothing for it.</param>
public sealed record DrawingKind(string Id, string About, Func<PaperInput, IReadOnlyList<string>> Subjects, Func<PaperInput, string, Picture?> Draw)
{
    /// <summary>Why it is left out when there is nothing for it: what the job would have to say.</summary>
    public string Without { get; init; } = "the job says nothing about it";

    /// <summary>What the planner has to work out first; null when it is drawn from a study.</summary>
    public PlannedFor? Needs { get; init; }

    /// <summary>All drawings of this kind that a design has.</summary>
    /// <param name="input">The studied design.</param>
    public IReadOnlyList<Picture> All(PaperInput input) => [.. Subjects(input).Select(subject => Draw(input, subject)).OfType<Picture>()];
}
