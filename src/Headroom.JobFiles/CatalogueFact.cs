using Headroom.Domain.Findings;

namespace Headroom.JobFiles;

/// <summary>One thing that a catalogue says of a model.</summary>
/// <param name="Kind">The kind of model, as a file has it: <c>switches</c>.</param>
/// <param name="Path">The keys that lead to it, with points between: <c>supplies.small.rated</c>.</param>
/// <param name="Value">The value as written, without the word for its origin.</param>
/// <param name="Origin">The word for its origin; empty when none is written.</param>
/// <param name="At">Where it stands.</param>
public sealed record CatalogueFact(string Kind, string Path, string Value, string Origin, Place At);
