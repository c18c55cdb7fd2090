using System.Globalization;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A day.</summary>
internal sealed class DateShape : ScalarShape<DateOnly>
{
    /// <inheritdoc/>
    public override string InWords => "a day as year-month-day";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Pattern("^[0-9]{4}-[0-9]{2}-[0-9]{2}$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, out DateOnly value) =>
        DateOnly.TryParseExact(scalar.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out value)
        || Refuse(Slips.NotAValue, scalar, reader);
}
