using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Firms;

/// <summary>The pattern of the numbers of quotations: <c>Q-{year}-{count}</c>.</summary>
internal sealed partial class QuoteNumberShape : ScalarShape<string>
{
    private const int Most = 60;

    private static readonly string[] Known = ["year", "month", "day", "count", "design"];

    /// <inheritdoc/>
    public override string InWords => $"a text with {Words.Or([.. Known.Select(part => $"{{{part}}}")])}";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => new() { ["type"] = "string", ["minLength"] = 1, ["maxLength"] = Most };

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out string value)
    {
        value = scalar.Text.Trim();
        if (value.Length is 0 or > Most)
            return Refuse(value.Length == 0 ? Slips.NotAValue : Slips.TooLong, scalar, reader);
        var wrong = Part().Matches(value).Select(part => part.Groups[1].Value).FirstOrDefault(part => !Known.Contains(part));
        if (wrong is null && !Part().Replace(value, "").AsSpan().ContainsAny('{', '}'))
            return true;
        reader.Refuse(FirmSlips.Pattern, scalar.At, wrong is null ? $"{Given(scalar, reader)}, with a brace by itself" : $"{Given(scalar, reader)}, with the part '{{{Words.Short(wrong)}}}'", InWords, reader.Meant(wrong ?? "", Known, "write it like 'Q-{year}-{count}'"));
        return false;
    }

    [GeneratedRegex(@"\{([^{}]*)\}")]
    private static partial Regex Part();
}
