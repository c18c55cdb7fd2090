using System.Globalization;
using System.Xml.Linq;

namespace Headroom.JobFiles.Firms;

/// <summary>How a part of an SVG is painted, with what it takes from the parts around it.</summary>
internal sealed record SvgPaint
{
    private static readonly Dictionary<string, string> Named = new(StringComparer.OrdinalIgnoreCase)
    {
        ["black"] = "#000000", ["white"] = "#ffffff", ["red"] = "#ff0000", ["green"] = "#008000", ["blue"] = "#0000ff", ["gray"] = "#808080", ["grey"] = "#808080", ["navy"] = "#000080",
        ["orange"] = "#ffa500", ["yellow"] = "#ffff00", ["maroon"] = "#800000", ["teal"] = "#008080", ["purple"] = "#800080", ["silver"] = "#c0c0c0", ["currentColor"] = "#000000",
    };

    // What changes how a shape looks and is not drawn here.
    private static readonly string[] Effects = ["opacity", "fill-opacity", "stroke-opacity", "filter", "mask", "clip-path", "stroke-dasharray"];

    /// <summary>What it is filled with; null for nothing. Without a word it is black.</summary>
    public string? Fill { get; init; } = "#000000";

    /// <summary>The colour of its outline; null for none.</summary>
    public string? Stroke { get; init; }

    /// <summary>The width of its outline.</summary>
    public double StrokeWidth { get; init; } = 1;

    /// <summary>True when what lies inside two outlines is a hole.</summary>
    public bool EvenOdd { get; init; }

    /// <summary>What cannot be drawn here; null when all can.</summary>
    public string? Problem { get; init; }

    /// <summary>The paint of a part that lies in this one.</summary>
    public SvgPaint Under(XElement element)
    {
        var paint = this;
        if (element.Attribute("class") is not null)
            paint = paint with { Problem = "it is painted by a style sheet (class)" };
        foreach (var attribute in element.Attributes().Where(attribute => attribute.Name.NamespaceName.Length == 0))
        {
            if (attribute.Name.LocalName == "style")
                paint = attribute.Value.Split(';').Select(one => one.Split(':', 2)).Where(one => one.Length == 2).Aggregate(paint, (before, one) => before.With(one[0].Trim(), one[1].Trim()));
            else
                paint = paint.With(attribute.Name.LocalName, attribute.Value.Trim());
        }

        return paint;
    }

    private SvgPaint With(string name, string value) => name switch
    {
        "fill" => value == "none" ? this with { Fill = null } : Colour(value) is { } colour ? this with { Fill = colour } : Cannot(name, value),
        "stroke" => value == "none" ? this with { Stroke = null } : Colour(value) is { } colour ? this with { Stroke = colour } : Cannot(name, value),
        "stroke-width" => double.TryParse(value.Replace("px", "", StringComparison.Ordinal), NumberStyles.Float, CultureInfo.InvariantCulture, out var width) && width >= 0 ? this with { StrokeWidth = width } : Cannot(name, value),
        "fill-rule" => this with { EvenOdd = value == "evenodd" },
        "display" or "visibility" when value is "none" or "hidden" => Cannot(name, value),
        _ when Effects.Contains(name) && value is not ("1" or "none") => Cannot(name, value),
        _ => this,
    };

    private SvgPaint Cannot(string name, string value) => this with { Problem = $"it has {name} '{Words.Short(value)}'" };

    private static string? Colour(string value)
    {
        if (Named.TryGetValue(value, out var named))
            return named;
        if (value.StartsWith('#') && value.Skip(1).All(char.IsAsciiHexDigit))
            return value.Length == 7 ? value.ToLowerInvariant() : value.Length == 4 ? $"#{value[1]}{value[1]}{value[2]}{value[2]}{value[3]}{value[3]}".ToLowerInvariant() : null;
        return value.StartsWith("rgb(", StringComparison.Ordinal) && !value.Contains('%') && SvgNumbers.All(value).ToList() is [>= 0 and <= 255 and var red, >= 0 and <= 255 and var green, >= 0 and <= 255 and var blue]
            ? FormattableString.Invariant($"#{(int)red:x2}{(int)green:x2}{(int)blue:x2}")
            : null;
    }
}
