using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Headroom.Domain.Firms;

namespace Headroom.JobFiles.Firms;

/// <summary>Reads an SVG of plain shapes in plain colours. Whatever else it holds is refused by name, never left out unseen.</summary>
/// <remarks>Source: SVG 1.1 (W3C, second edition), chapters 7 to 11.</remarks>
internal sealed class SvgArt
{
    private const int MostCorners = 200_000;
    private const int MostDepth = 40;

    private static readonly string[] Silent = ["title", "desc", "metadata", "namedview"];
    private static readonly string[] Groups = ["g", "svg", "a"];

    private readonly List<ArtShape> _shapes = [];
    private int _corners;

    /// <summary>The picture; null with what stands in the way.</summary>
    public static (Artwork? Art, string? Problem) Read(byte[] bytes)
    {
        try
        {
            using var reader = XmlReader.Create(new MemoryStream(bytes), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null, MaxCharactersInDocument = LogoShape.MostBytes * 2L });
            var root = XDocument.Load(reader, LoadOptions.SetLineInfo).Root!;
            if (root.Name.LocalName != "svg")
                return (null, $"it is neither PNG nor SVG, but XML with the root '{Words.Short(root.Name.LocalName)}'");
            var (left, top, width, height) = Sides(root);
            var art = new SvgArt();
            art.Walk(root, new SvgPaint(), SvgMatrix.Same.Then(new(1, 0, 0, 1, -left, -top)), 0);
            return art._shapes.Count == 0 ? (null, "nothing is drawn in it") : (new Artwork(width, height) { Shapes = art._shapes }, null);
        }
        catch (XmlException reason)
        {
            return (null, reason.LineNumber > 0 ? $"it is neither PNG nor SVG (line {reason.LineNumber}, column {reason.LinePosition})" : "it is neither PNG nor SVG");
        }
        catch (FormatException reason)
        {
            return (null, reason.Message);
        }
    }

    private static (double Left, double Top, double Width, double Height) Sides(XElement root)
    {
        if (root.Attribute("viewBox") is { } box)
        {
            var numbers = SvgNumbers.All(box.Value).ToList();
            if (numbers is [var left, var top, > 0 and var width, > 0 and var height])
                return (left, top, width, height);
            throw At(root, $"its viewBox is '{Words.Short(box.Value)}'");
        }

        var sides = (Number(root, "width", 0), Number(root, "height", 0));
        return sides is ( > 0, > 0) ? (0, 0, sides.Item1, sides.Item2) : throw At(root, "it has neither viewBox nor width and height");
    }

    private void Walk(XElement element, SvgPaint paint, SvgMatrix matrix, int depth)
    {
        if (depth > MostDepth)
            throw At(element, "groups lie in groups deeper than any picture needs");
        var own = paint.Under(element);
        var inner = element.Attribute("transform") is { } transform && element.Parent is not null ? matrix.Then(SvgMatrix.Of(transform.Value) ?? throw At(element, $"its transform is '{Words.Short(transform.Value)}'")) : matrix;
        foreach (var child in element.Elements())
        {
            var name = child.Name.LocalName;
            if (Silent.Contains(name) || (name == "defs" && !child.HasElements))
                continue;
            if (Groups.Contains(name))
                Walk(child, own, inner, depth + 1);
            else if (Lines(child) is { } lines)
                Add(child, lines, own.Under(child), child.Attribute("transform") is { } moved ? inner.Then(SvgMatrix.Of(moved.Value) ?? throw At(child, $"its transform is '{Words.Short(moved.Value)}'")) : inner);
            else
                throw At(child, $"it holds <{Words.Short(name)}>");
        }
    }

    private void Add(XElement element, List<ArtLine> lines, SvgPaint paint, SvgMatrix matrix)
    {
        if (paint.Problem is { } problem)
            throw At(element, problem);
        _corners += lines.Sum(line => line.Corners.Count);
        if (_corners > MostCorners)
            throw At(element, $"it has more than {MostCorners} corners");
        if (paint.Fill is null && paint.Stroke is null)
            return;
        _shapes.Add(new ArtShape([.. lines.Select(line => line with { Corners = [.. line.Corners.Select(matrix.Of)] })], paint.Fill, paint.Stroke, paint.StrokeWidth * matrix.Scale) { EvenOdd = paint.EvenOdd });
    }

    private static List<ArtLine>? Lines(XElement element) => element.Name.LocalName switch
    {
        "path" => SvgPath.Lines(element.Attribute("d")?.Value ?? "") ?? throw At(element, "its path cannot be read"),
        "rect" => Rect(element),
        "circle" => [SvgPath.Ellipse((Number(element, "cx", 0), Number(element, "cy", 0)), (Number(element, "r", 0), Number(element, "r", 0)))],
        "ellipse" => [SvgPath.Ellipse((Number(element, "cx", 0), Number(element, "cy", 0)), (Number(element, "rx", 0), Number(element, "ry", 0)))],
        "line" => [new ArtLine([(Number(element, "x1", 0), Number(element, "y1", 0)), (Number(element, "x2", 0), Number(element, "y2", 0))], false)],
        "polygon" => [Corners(element, closed: true)],
        "polyline" => [Corners(element, closed: false)],
        _ => null,
    };

    private static List<ArtLine> Rect(XElement element)
    {
        if (element.Attribute("rx") is not null || element.Attribute("ry") is not null)
            throw At(element, "it holds a rectangle with round corners");
        var (x, y, width, height) = (Number(element, "x", 0), Number(element, "y", 0), Number(element, "width", 0), Number(element, "height", 0));
        return [new ArtLine([(x, y), (x + width, y), (x + width, y + height), (x, y + height)], true)];
    }

    private static ArtLine Corners(XElement element, bool closed)
    {
        var numbers = SvgNumbers.All(element.Attribute("points")?.Value ?? "").ToList();
        return numbers.Count >= 4 && numbers.Count % 2 == 0
            ? new ArtLine([.. Enumerable.Range(0, numbers.Count / 2).Select(i => (numbers[2 * i], numbers[2 * i + 1]))], closed)
            : throw At(element, "its points cannot be read");
    }

    private static double Number(XElement element, string name, double otherwise)
    {
        if (element.Attribute(name)?.Value is not { } text)
            return otherwise;
        var plain = text.Trim();
        plain = plain.EndsWith("px", StringComparison.Ordinal) || plain.EndsWith("mm", StringComparison.Ordinal) || plain.EndsWith("pt", StringComparison.Ordinal) ? plain[..^2] : plain;
        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : throw At(element, $"its {name} is '{Words.Short(text)}'");
    }

    private static FormatException At(XElement element, string what) =>
        new($"{what} (line {((IXmlLineInfo)element).LineNumber}, column {((IXmlLineInfo)element).LinePosition})");
}
