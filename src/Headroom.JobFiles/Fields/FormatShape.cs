using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>The version of the format of a file.</summary>
internal sealed class FormatShape : ScalarShape<int>
{
    /// <summary>The one version there is.</summary>
    public const int Known = 1;

    /// <inheritdoc/>
    public override string InWords => $"the number {Known}";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => new() { ["enum"] = new JsonArray(Known, Known.ToString(System.Globalization.CultureInfo.InvariantCulture)) };

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, out int value)
    {
        value = Known;
        return scalar.Text == "1" || Refuse(Slips.Format, scalar, reader, "use a newer Headroom when the file was written for one, else write 1");
    }
}
