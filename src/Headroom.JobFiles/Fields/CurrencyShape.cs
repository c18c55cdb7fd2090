using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A currency by its three letters (ISO 4217).</summary>
internal sealed class CurrencyShape : ScalarShape<string>
{
    /// <inheritdoc/>
    public override string InWords => "the three capital letters of a currency";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Pattern($"^([A-Z]{{3}}|{SchemaParts.Unknown})$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out string value)
    {
        value = scalar.Text;
        return (value.Length == 3 && value.All(char.IsAsciiLetterUpper)) || Refuse(Slips.NotAValue, scalar, reader);
    }
}
