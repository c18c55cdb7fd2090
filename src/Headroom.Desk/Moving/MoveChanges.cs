using Headroom.Desk.Shown;
using Headroom.JobFiles.Changes;

namespace Headroom.Desk.Moving;

/// <summary>What is to be changed in the text of a job for a move, or why it cannot be.</summary>
/// <param name="Changes">Each change with the thing it moves.</param>
/// <param name="Slips">What is wrong, by thing; empty when nothing is.</param>
internal sealed record MoveChanges(IReadOnlyList<(string Thing, FieldChange Change)> Changes, IReadOnlyDictionary<string, MoveSlip> Slips);
