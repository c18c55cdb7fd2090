using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A word to choose from a list; a hyphen and a space are the same.</summary>
/// <typeparam name="T">What it becomes.</typeparam>
/// <param name="choices">The words with what each becomes; of several words for the same the first is the one shown.</param>
internal sealed class WordShape<T>(params (string Word, T Value)[] choices) : ScalarShape<T>
{
    /// <summary>The words that may stand there besides and are not told, such as other spellings.</summary>
    public IReadOnlyList<(string Word, T Value)> Also { get; init; } = [];

    /// <inheritdoc/>
    public override string InWords => choices.Length == 1 ? $"the word '{choices[0].Word}'" : (choices.Length > 2 ? "one of " : "") + Words.Or([.. choices.Select(choice => choice.Word)]);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.OneOf([.. choices.Concat(Also).SelectMany(choice => Spellings(choice.Word))]);

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out T value)
    {
        foreach (var (word, meaning) in choices.Concat(Also))
        {
            if (!YamlKey.Same(word, scalar.Text))
                continue;
            value = meaning;
            return true;
        }

        value = default;
        return Refuse(Slips.NotAChoice, scalar, reader, reader.Meant(scalar.Text, choices.Select(choice => choice.Word), "choose one of them, or leave it out when it is not known"));
    }

    private static IEnumerable<string> Spellings(string word) =>
        word.AsSpan().IndexOfAny(' ', '-') < 0 ? [word] : [word, word.Contains('-') ? word.Replace('-', ' ') : word.Replace(' ', '-')];
}
