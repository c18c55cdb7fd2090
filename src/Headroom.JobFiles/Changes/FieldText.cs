using Headroom.Domain.Findings;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Changes;

/// <summary>What a person types for one field, as it is to stand in a file.</summary>
public static class FieldText
{
    /// <summary>Makes it one value on one line: a map or list where it begins as one, else a text as typed.</summary>
    /// <param name="typed">What was typed.</param>
    /// <returns>The value; null for nothing.</returns>
    public static Loaded<string> Of(string typed)
    {
        var text = typed.Trim();
        if (text.Length == 0)
            return new(null, []);
        if (text[0] is not ('{' or '[' or '"' or '\''))
            return new(YamlWriter.Word(text), []);
        // Behind a key, so that what is no single value is no value at all.
        var read = YamlText.Parse("value: " + text, "");
        return read is { Ok: true, Value: YamlMap { Entries: [{ Value: { } value }] } }
            ? new(YamlWriter.Flow(value), read.Findings)
            : new(null, [new Finding(Severity.Error, EditCodes.NoValue.Code, new Place("what was typed", 1, 1), $"'{Words.Short(text)}'", "a text, or keys in braces, or values in brackets", "see whether every brace, bracket and quotation mark is closed")]);
    }

    /// <summary>Keys with what was typed behind them, as one map; without those behind which nothing was typed.</summary>
    /// <param name="fields">The keys in the order in which they are to stand.</param>
    /// <returns>The map, or why there is none.</returns>
    public static Loaded<string> Of(IEnumerable<KeyValuePair<string, string>> fields)
    {
        var findings = new List<Finding>();
        var parts = new List<string>();
        foreach (var (key, typed) in fields)
        {
            var value = Of(typed);
            findings.AddRange(value.Findings);
            if (value.Value is { } text)
                parts.Add($"{YamlWriter.Word(key)}: {text}");
        }

        return new("{" + string.Join(", ", parts) + "}", findings);
    }
}
