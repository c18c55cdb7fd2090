using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Sums;

/// <summary>A choice between words.</summary>
/// <param name="name">The name in plain words with hyphens.</param>
/// <param name="meaning">What it is, in a few words.</param>
/// <param name="words">The words.</param>
public sealed class WordInput(string name, string meaning, params string[] words) : SumInput(name, meaning)
{
    /// <summary>The words.</summary>
    public IReadOnlyList<string> Choices => words;

    /// <inheritdoc/>
    public override string Allowed => words.Length < 2 ? string.Concat(words) : $"{string.Join(", ", words.SkipLast(1))} or {words[^1]}";

    /// <inheritdoc/>
    public override SumValue? Read(string text, out QuantityProblem? problem)
    {
        var word = text.Trim();
        problem = words.Contains(word) ? null
            : new(QuantitySlip.NotANumber, Allowed, Spelling.Nearest(word, words) is { } near ? $"did you mean {near}?" : "write one of these words");
        return problem is null ? new SumValue(word, []) : null;
    }

    /// <inheritdoc/>
    public override IReadOnlyList<WorkingInput> Rows(SumValue value) => [];

    /// <inheritdoc/>
    public override bool Knows(string word) => words.Contains(word);
}
