using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.Domain.Addresses;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A range of addresses, version 6: <c>fd4c:12ab:77::/48</c>.</summary>
internal sealed class Ip6RangeShape : ScalarShape<Given<Ip6Range>>
{
    // A subnet of version 6 is a /64; what is wider than a /16 was given to nobody.
    private const int Least = 16;
    private const int Most = 64;

    /// <inheritdoc/>
    public override string InWords => $"a range of addresses of version 6 with its prefix, /{Least} to /{Most}, and no bits behind it";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Pattern($@"^\s*([0-9A-Fa-f:]+/[0-9]{{1,3}}|{SchemaParts.Unknown})\s*$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out Given<Ip6Range> value)
    {
        value = null;
        if (Ip6Range.Read(scalar.Text.Trim(), out var advice) is not { } range)
            return Refuse(Slips.NotAValue, scalar, reader, advice);
        if (range.Prefix is < Least or > Most)
            return Refuse(Slips.OutOfBounds, scalar, reader, "correct the prefix");
        value = new Given<Ip6Range>(range, scalar.Text, Origin.Unstated, null, scalar.At);
        return true;
    }
}
