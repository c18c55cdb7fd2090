using System.Buffers;
using System.Globalization;
using System.Text;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Editing;

/// <summary>Writes texts and trees so that they read back as what they were, whichever characters they hold.</summary>
public static class YamlWriter
{
    // At the beginning of a plain text each of these means something else.
    private const string Leading = "-?:,[]{}#&*!|>'\"%@`=<";

    private static readonly SearchValues<char> OnlyInQuotes = SearchValues.Create(",[]{}\r\n\t\u0085\u2028\u2029\uFEFF");

    // What one YAML reader or another takes for yes, no or nothing, and our own words for a value that is not known.
    private static readonly HashSet<string> Meaning = new(StringComparer.OrdinalIgnoreCase)
    {
        "yes", "no", "true", "false", "on", "off", "y", "n", "null", "~", "unknown", "none",
    };

    /// <summary>A text, put in quotes when it would otherwise be read as something else: a key, a comment, yes or no, a number.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The text as it is to be written, on one line, in lines or in braces.</returns>
    public static string Text(string text) => Meaning.Contains(text) || IsNumber(text) ? Quoted(text) : Word(text);

    /// <summary>A word that may mean something: <c>yes</c>, <c>unknown</c>, a date; put in quotes only when it could not be read back at all.</summary>
    /// <param name="word">The word.</param>
    /// <returns>The word as it is to be written.</returns>
    public static string Word(string word) => CanBePlain(word) ? word : Quoted(word);

    /// <summary>A tree in braces and brackets, on one line.</summary>
    /// <param name="node">The tree.</param>
    /// <returns>The line.</returns>
    public static string Flow(YamlNode node) => node switch
    {
        YamlMap map => "{" + string.Join(", ", map.Entries.Select(e => $"{Key(e.Key)}: {Flow(e.Value)}")) + "}",
        YamlList list => "[" + string.Join(", ", list.Items.Select(Flow)) + "]",
        YamlScalar { IsEmpty: true } => "~",
        YamlScalar { IsUnknown: true } => "unknown",
        YamlScalar scalar => Key(scalar),
        _ => throw new ArgumentOutOfRangeException(nameof(node), node, "a map, a list or a text"),
    };

    private static string Key(YamlScalar scalar) => scalar.Style == YamlStyle.Plain ? Word(scalar.Text) : Quoted(scalar.Text);

    private static bool CanBePlain(string text) =>
        text.Length > 0
        && !Leading.Contains(text[0])
        && !char.IsWhiteSpace(text[0])
        && !char.IsWhiteSpace(text[^1])
        && text[^1] != ':'
        && !text.Contains(": ", StringComparison.Ordinal)
        && !text.Contains(" #", StringComparison.Ordinal)
        && !text.AsSpan().ContainsAny(OnlyInQuotes)
        && !text.Any(char.IsControl);

    private static bool IsNumber(string text) =>
        double.TryParse(text.Replace("_", "", StringComparison.Ordinal), NumberStyles.Float, CultureInfo.InvariantCulture, out _)
        || text.StartsWith("0x", StringComparison.OrdinalIgnoreCase)
        || text.StartsWith("0o", StringComparison.OrdinalIgnoreCase);

    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var character in text)
            quoted.Append(Escaped(character));
        return quoted.Append('"').ToString();
    }

    private static string Escaped(char character) => character switch
    {
        '"' => "\\\"",
        '\\' => "\\\\",
        '\n' => "\\n",
        '\r' => "\\r",
        '\t' => "\\t",
        _ when char.IsControl(character) || character is '\u2028' or '\u2029' or '\uFEFF' =>
            "\\u" + ((int)character).ToString("X4", CultureInfo.InvariantCulture),
        _ => character.ToString(),
    };
}
