using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Firms;

/// <summary>A colour that can be read on white paper.</summary>
internal sealed class ColourShape : ScalarShape<string>
{
    // WCAG 2.2, success criterion 1.4.3: text and its ground differ at least so much in relative luminance.
    private const double LeastContrast = 4.5;

    /// <inheritdoc/>
    public override string InWords => "a colour as '#1f4e5f', dark enough to be read on white";

    /// <summary>The ratio of contrast of a colour with white, from 1 to 21.</summary>
    /// <param name="colour">The colour, as <c>#rrggbb</c>.</param>
    /// <remarks>Source: WCAG 2.2, definitions of contrast ratio and relative luminance.</remarks>
    public static double OnWhite(string colour)
    {
        var luminance = 0.2126 * Linear(colour, 1) + 0.7152 * Linear(colour, 3) + 0.0722 * Linear(colour, 5);
        return (1 + 0.05) / (luminance + 0.05);
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Pattern($"^(#[0-9A-Fa-f]{{6}}|{SchemaParts.Unknown})$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out string value)
    {
        value = scalar.Text.ToLowerInvariant();
        if (value.Length != 7 || value[0] != '#' || !value.Skip(1).All(char.IsAsciiHexDigit))
            return Refuse(Slips.NotAValue, scalar, reader, "write it in quotation marks, six digits behind '#': '#1f4e5f'");
        var contrast = OnWhite(value);
        if (contrast >= LeastContrast)
            return true;
        reader.Refuse(
            FirmSlips.Faint,
            scalar.At,
            string.Create(CultureInfo.InvariantCulture, $"{Given(scalar, reader)}, which differs from white by {Math.Floor(contrast * 10) / 10:0.0} to 1"),
            string.Create(CultureInfo.InvariantCulture, $"at least {LeastContrast} to 1, so that a name can be read in it"),
            "take a darker one");
        return false;
    }

    private static double Linear(string colour, int from)
    {
        var share = int.Parse(colour.AsSpan(from, 2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture) / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
