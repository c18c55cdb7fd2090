using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A guess in three figures, at best, most likely, at worst: <c>20 / 35 / 70 min</c>.</summary>
/// <param name="what">What it is, in words.</param>
/// <param name="unit">The unit behind the last; empty for plain numbers.</param>
/// <param name="bounds">The least and the most of each.</param>
internal sealed class ThreePointShape(string what, string unit, (decimal Least, decimal Most) bounds) : ScalarShape<ThreePoint>
{
    /// <inheritdoc/>
    public override string InWords => string.Create(
        CultureInfo.InvariantCulture, $"{what} as at best / most likely / at worst, rising, each between {bounds.Least} and {bounds.Most}{(unit.Length > 0 ? " " + unit : "")}");

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Pattern($@"^\s*([0-9.]+\s*/\s*[0-9.]+\s*/\s*[0-9.]+\s*{unit}|{SchemaParts.Unknown})\s*$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out ThreePoint value)
    {
        value = null;
        var text = scalar.Text.Trim();
        if (!text.EndsWith(unit, StringComparison.Ordinal))
            return Refuse(Slips.NoUnit, scalar, reader);
        var parts = text[..^unit.Length].Split('/', StringSplitOptions.TrimEntries);
        var figures = new List<decimal>(3);
        foreach (var part in parts)
        {
            if (!decimal.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var figure))
                return Refuse(part.Contains(',', StringComparison.Ordinal) ? Slips.Comma : Slips.NotAValue, scalar, reader);
            figures.Add(figure);
        }

        if (figures.Count != 3)
            return Refuse(Slips.NotAValue, scalar, reader);
        if (figures[0] > figures[1] || figures[1] > figures[2])
            return Refuse(Slips.Reversed, scalar, reader, "write the smallest first and the largest last");
        if (figures[0] < bounds.Least || figures[2] > bounds.Most)
            return Refuse(Slips.OutOfBounds, scalar, reader, "correct it, or leave it out when it is not known");
        value = new ThreePoint(figures[0], figures[1], figures[2], scalar.Text, scalar.At);
        return true;
    }
}
