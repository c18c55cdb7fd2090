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
    public (string Word, T Value)[] Also { get; init; } = [];

    /// <inheritdoc/>
    public override string InWords => choices.Length == 1 ? $"the word '{choices[0].Word}'" : (choices.Length > 2 ? "one of " : "") + Words.Or([.. choices.Select(choice => choice.Word)]);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.OneOf([.. choices.Concat(Also).SelectMany(choice => Spellings(choice.Word))]);

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out T value)
    {
        return Is(choices, scalar.Text, out value) || Is(Also, scalar.Text, out value) || Refuse(Slips.NotAChoice, scalar, reader, reader.Meant(scalar.Text, choices.Select(choice => choice.Word), "choose one of them, or leave it out when it is not known"));
    }

    private static bool Is((string Word, T Value)[] words, string text, [MaybeNullWhen(false)] out T value)
    {
        for (var i = 0; i < words.Length; i++)
        {
            if (!YamlKey.Same(words[i].Word, text))
                continue;
            value = words[i].Value;
            return true;
        }

        value = default;
        return false;
    }

    private static IEnumerable<string> Spellings(string word) =>
        word.AsSpan().IndexOfAny(' ', '-') < 0 ? [word] : [word, word.Contains('-') ? word.Replace('-', ' ') : word.Replace(' ', '-')];
}
