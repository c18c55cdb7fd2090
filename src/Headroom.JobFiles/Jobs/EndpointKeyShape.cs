using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>The key of endpoints: a name, a range of names, or a count and a model as in <c>12 x phone</c>.</summary>
internal sealed partial class EndpointKeyShape : ScalarShape<EndpointKey>
{
    private static readonly NamesShape Names = new("an endpoint");

    /// <inheritdoc/>
    public override string InWords => $"{Names.InWords}, or a count and a model such as 12 x phone";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.AnyOf([
        Names.Schema(parts),
        SchemaParts.Pattern($@"^[0-9]+ *[x×] *{NameShape.Pattern}$", "string")]);

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out EndpointKey value)
    {
        value = null;
        var counted = Counted().Match(scalar.Text);
        if (!counted.Success)
        {
            if (Names.Read(scalar, reader, out var names))
                value = new EndpointKey(names, 0, null, scalar.Text);
            return value is not null;
        }

        var model = counted.Groups[2].Value;
        if (!NameShape.IsName(model))
            return Refuse(Slips.NotAName, scalar, reader);
        if (!int.TryParse(counted.Groups[1].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count is < 1 or > NameRange.Most)
            return Refuse(Slips.OutOfBounds, scalar, reader, $"count from 1 to {NameRange.Most}");
        value = new EndpointKey([], count, model, scalar.Text);
        return Budget.Spend(count, scalar, reader);
    }

    [GeneratedRegex("^([0-9]+) *[x×] *(.+)$", RegexOptions.CultureInvariant)]
    private static partial Regex Counted();
}
