using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Editing;

/// <summary>Keys with their values in braces; what is not known is left out.</summary>
internal sealed class FlowText
{
    private readonly List<string> _parts = [];

    /// <summary>Adds a key with a text.</summary>
    public FlowText Add(string key, string? text) => Raw(key, text is null ? null : YamlWriter.Text(text));

    /// <summary>Adds a key with a number.</summary>
    public FlowText Add(string key, int? number) => Raw(key, number?.ToString(System.Globalization.CultureInfo.InvariantCulture));

    /// <summary>Adds a key with yes or no.</summary>
    public FlowText Add(string key, bool? value) => Raw(key, value switch { true => "yes", false => "no", null => null });

    /// <summary>Adds a key with a value as it was written.</summary>
    public FlowText Add<T>(string key, Given<T>? value)
        where T : struct => Raw(key, value is null ? null : YamlWriter.Word(value.Written));

    /// <summary>Adds a key with a word of a list of words, as a job file has it.</summary>
    public FlowText Add<T>(string key, T? word)
        where T : struct, Enum => Raw(key, word is { } known ? Word(known) : null);

    /// <summary>Adds a key with what is written already.</summary>
    public FlowText Raw(string key, string? written)
    {
        if (written is not null)
            _parts.Add($"{key}: {written}");
        return this;
    }

    /// <summary>A word as a job file has it: <c>PortLimit</c> is <c>port-limit</c> there.</summary>
    public static string Word<T>(T value)
        where T : struct, Enum =>
        string.Concat(value.ToString().Select((letter, at) => at > 0 && char.IsUpper(letter) ? $"-{char.ToLowerInvariant(letter)}" : $"{char.ToLowerInvariant(letter)}"));

    /// <inheritdoc/>
    public override string ToString() => "{" + string.Join(", ", _parts) + "}";
}
