using System.Globalization;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A whole number of things.</summary>
/// <param name="least">The least that makes sense.</param>
/// <param name="most">The most.</param>
internal sealed class CountShape(int least, int most) : ScalarShape<int>
{
    /// <inheritdoc/>
    public override string InWords => $"a whole number between {least} and {most}";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => new()
    {
        ["type"] = SchemaParts.Types("integer", "string"),
        ["minimum"] = least,
        ["maximum"] = most,
        ["pattern"] = $"^(-?[0-9]+|{SchemaParts.Unknown})$",
    };

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, out int value)
    {
        if (!int.TryParse(scalar.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value))
            return Refuse(Slips.NotAValue, scalar, reader, "write digits only, or leave it out when it is not known");
        return (value >= least && value <= most) || Refuse(Slips.OutOfBounds, scalar, reader, "correct it, or leave it out when it is not known");
    }
}
