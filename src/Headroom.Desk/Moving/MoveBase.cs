using Headroom.Desk.Work;
using Headroom.JobFiles.Changes;

namespace Headroom.Desk.Moving;

/// <summary>What is moved about: a design of a job as it is saved.</summary>
/// <param name="Open">The revision.</param>
/// <param name="Studied">The design, studied.</param>
internal sealed record MoveBase(OpenJob Open, StudiedDesign Studied)
{
    /// <summary>Where everything stands in the text.</summary>
    public JobOutline Outline => field ??= new JobOutline(Open.Text.Text);
}
