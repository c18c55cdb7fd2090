using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>The number of a port, or a range of them: <c>5..16</c>.</summary>
internal sealed class PortNumbersShape : ScalarShape<PortRange>
{
    /// <inheritdoc/>
    public override string InWords => $"the number of a port from 1 to {PortNumbers.Most}, or a range such as 5..16";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Pattern(@"^[0-9]{1,3}(\s*[.][.]\s*[0-9]{1,3})?$", "string", "integer");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out PortRange value)
    {
        value = PortNumbers.Read(scalar.Text);
        return value is not null || Refuse(Slips.NotAPort, scalar, reader, "write the number as it is printed on the unit, the smaller end of a range first");
    }
}
