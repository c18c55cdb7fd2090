using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Yaml;

/// <summary>A text: a key or a value.</summary>
/// <param name="text">The text, without quotes.</param>
/// <param name="style">How it was written.</param>
/// <param name="at">Where it begins.</param>
/// <param name="span">The indexes of its first character and behind its last.</param>
public sealed class YamlScalar(string text, YamlStyle style, Place at, (int Start, int End) span) : YamlNode(at, span.Start, span.End)
{
    /// <summary>The text, without quotes.</summary>
    public string Text { get; } = text;

    /// <summary>How it was written.</summary>
    public YamlStyle Style { get; } = style;

    /// <summary>True when nothing was written, or one of the words that YAML has for nothing.</summary>
    public bool IsEmpty => Style == YamlStyle.Plain && Text is "" or "~" or "null" or "Null" or "NULL";

    /// <summary>True for <c>unknown</c> and <c>?</c>, without quotes: the person says that the value is not known.</summary>
    public bool IsUnknown => Style == YamlStyle.Plain && Text is "unknown" or "?";

    /// <inheritdoc/>
    public override string What => Style == YamlStyle.Refused ? "something refused" : IsEmpty ? "nothing" : "a text";
}
