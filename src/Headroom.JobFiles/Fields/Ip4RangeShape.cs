using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.Domain.Addresses;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A range of addresses, version 4: <c>10.20.0.0/22</c>.</summary>
internal sealed class Ip4RangeShape : ScalarShape<Given<Ip4Range>>
{
    private const int LeastPrefix = 8;

    /// <inheritdoc/>
    public override string InWords => $"a range of addresses with its prefix, /{LeastPrefix} to /32, and no bits behind it";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Pattern($@"^\s*([0-9]{{1,3}}([.][0-9]{{1,3}}){{3}}/[0-9]{{1,2}}|{SchemaParts.Unknown})\s*$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out Given<Ip4Range> value)
    {
        value = null;
        if (Ip4Range.Read(scalar.Text.Trim(), out var advice) is not { } range)
            return Refuse(Slips.NotAValue, scalar, reader, advice);
        if (range.Prefix < LeastPrefix)
            return Refuse(Slips.OutOfBounds, scalar, reader, "correct the prefix");
        value = new Given<Ip4Range>(range, scalar.Text, Origin.Unstated, null, scalar.At);
        return true;
    }
}
