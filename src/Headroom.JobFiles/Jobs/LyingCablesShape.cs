using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>Cables of one thickness: <c>4 x 6.1 mm</c>.</summary>
internal sealed class LyingCablesShape : ScalarShape<LyingCables>
{
    private const int Most = 1000;

    /// <inheritdoc/>
    public override string InWords => $"number x thickness, such as 4 x 6.1 mm, of 1 to {Most} cables";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) =>
        SchemaParts.Pattern($@"^\s*[0-9]+\s*[x×]\s*[0-9.]+\s*(mm|cm|in|m)(\s+[a-z]+)?\s*$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out LyingCables value)
    {
        value = null;
        var cross = scalar.Text.AsSpan().IndexOfAny('x', '×');
        if (cross < 0 || !int.TryParse(scalar.Text.AsSpan(0, cross).Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var count))
            return Refuse(Slips.NotAValue, scalar, reader);
        var thickness = new YamlScalar(scalar.Text[(cross + 1)..].Trim(), scalar.Style, scalar.At, (scalar.Start, scalar.End));
        if (count is < 1 or > Most)
            return Refuse(Slips.OutOfBounds, scalar, reader, "correct the number");
        if (!Sensible.Thickness.Read(thickness, reader, out var diameter))
            return false;
        value = new LyingCables(count, diameter);
        return true;
    }
}
