using System.Globalization;
using System.Text;
using System.Xml;
using Headroom.Documents.Letters;
using Headroom.Domain.Firms;

namespace Headroom.Documents.Canvas;

/// <summary>Draws for a page: text stays text, and a style sheet may change the inks by their classes.</summary>
public sealed class SvgCanvas : ICanvas
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    private readonly XmlWriter _xml;
    private readonly bool _alone;

    private SvgCanvas(XmlWriter xml, bool alone) => (_xml, _alone) = (xml, alone);

    /// <summary>Draws a picture as a document or as a part of a page.</summary>
    /// <param name="picture">The picture.</param>
    /// <returns>One <c>svg</c> element; the same for the same picture, always.</returns>
    public static string Write(Picture picture) => Write(picture, alone: false);

    /// <summary>Draws a picture as a file by itself: at its own size, on white, every text as wide as it was laid out even where the letters are not installed.</summary>
    /// <param name="picture">The picture.</param>
    /// <returns>One <c>svg</c> element; the same for the same picture, always.</returns>
    public static string WriteFile(Picture picture) => Write(picture, alone: true);

    private static string Write(Picture picture, bool alone)
    {
        var text = new StringBuilder();
        using (var xml = XmlWriter.Create(text, new XmlWriterSettings { OmitXmlDeclaration = true, NewLineHandling = NewLineHandling.None, CheckCharacters = true }))
        {
            xml.WriteStartElement("svg", Namespace);
            xml.WriteAttributeString("viewBox", $"0 0 {Number(picture.Width)} {Number(picture.Height)}");
            if (alone)
            {
                xml.WriteAttributeString("width", $"{Number(picture.Width)}pt");
                xml.WriteAttributeString("height", $"{Number(picture.Height)}pt");
            }

            xml.WriteAttributeString("role", "img");
            xml.WriteAttributeString("font-family", "'IBM Plex Sans', sans-serif");
            xml.WriteElementString("title", Namespace, picture.Title);
            var canvas = new SvgCanvas(xml, alone);
            if (alone)
                canvas.Rect(new Box(0, 0, picture.Width, picture.Height), Look.Solid(Ink.Paper));
            picture.Draw(canvas, new Spot(0, 0));
            xml.WriteEndElement();
        }

        return text.ToString();
    }

    /// <inheritdoc/>
    public void Line(Spot from, Spot to, Stroke stroke)
    {
        _xml.WriteStartElement("line", Namespace);
        Attributes(("x1", from.X), ("y1", from.Y), ("x2", to.X), ("y2", to.Y));
        Dress(new Look(stroke));
    }

    /// <inheritdoc/>
    public void Rect(Box box, Look look)
    {
        _xml.WriteStartElement("rect", Namespace);
        Attributes(("x", box.X), ("y", box.Y), ("width", box.Width), ("height", box.Height));
        Dress(look);
    }

    /// <inheritdoc/>
    public void Circle(Spot middle, double radius, Look look)
    {
        _xml.WriteStartElement("circle", Namespace);
        Attributes(("cx", middle.X), ("cy", middle.Y), ("r", radius));
        Dress(look);
    }

    /// <inheritdoc/>
    public void Poly(IReadOnlyList<Spot> spots, bool closed, Look look)
    {
        _xml.WriteStartElement(closed ? "polygon" : "polyline", Namespace);
        _xml.WriteAttributeString("points", string.Join(' ', spots.Select(spot => $"{Number(spot.X)},{Number(spot.Y)}")));
        Dress(look);
    }

    /// <inheritdoc/>
    public void Text(string text, Spot at, Lettering lettering)
    {
        _xml.WriteStartElement("text", Namespace);
        Attributes(("x", at.X), ("y", at.Y), ("font-size", lettering.Size));
        if (lettering.Anchor != Anchor.Start)
            _xml.WriteAttributeString("text-anchor", lettering.Anchor == Anchor.Middle ? "middle" : "end");
        if (lettering.Turned != 0)
            _xml.WriteAttributeString("transform", $"rotate({Number(lettering.Turned)} {Number(at.X)} {Number(at.Y)})");
        if (_alone && text.Length > 1)
        {
            Attributes(("textLength", Typeface.Width(text, lettering)));
            _xml.WriteAttributeString("lengthAdjust", "spacingAndGlyphs");
        }

        Letters(lettering.Face);
        _xml.WriteAttributeString("fill", Inks.Colour(lettering.Ink));
        _xml.WriteAttributeString("class", $"fill-{Name(lettering.Ink)}");
        _xml.WriteString(Typeface.Of(lettering.Face).Written(text));
        _xml.WriteEndElement();
    }

    /// <inheritdoc/>
    public void Art(Artwork art, Box box)
    {
        if (!art.Png.IsEmpty)
        {
            _xml.WriteStartElement("image", Namespace);
            foreach (var (name, value) in new[] { ("x", box.X), ("y", box.Y), ("width", box.Width), ("height", box.Height) })
                _xml.WriteAttributeString(name, Number(value));
            _xml.WriteAttributeString("href", $"data:image/png;base64,{Convert.ToBase64String(art.Png.Span)}");
            _xml.WriteEndElement();
            return;
        }

        var scale = box.Width / art.Width;
        foreach (var shape in art.Shapes)
        {
            _xml.WriteStartElement("path", Namespace);
            _xml.WriteAttributeString("d", string.Concat(shape.Lines.Select(line => "M" + string.Join('L', line.Corners.Select(corner => $"{Number(box.X + corner.X * scale)} {Number(box.Y + corner.Y * scale)}")) + (line.Closed ? "Z" : ""))));
            _xml.WriteAttributeString("fill", shape.Fill ?? "none");
            _xml.WriteAttributeString("fill-rule", shape.EvenOdd ? "evenodd" : "nonzero");
            if (shape.Stroke is { } stroke)
            {
                _xml.WriteAttributeString("stroke", stroke);
                _xml.WriteAttributeString("stroke-width", Number(shape.StrokeWidth * scale));
            }

            _xml.WriteEndElement();
        }
    }

    /// <inheritdoc/>
    public IDisposable Part(string title)
    {
        _xml.WriteStartElement("g", Namespace);
        _xml.WriteElementString("title", Namespace, title);
        return new End(_xml);
    }

    private void Letters(Face face)
    {
        if (face == Face.Strong)
            _xml.WriteAttributeString("font-weight", "600");
        else if (face == Face.Slanted)
            _xml.WriteAttributeString("font-style", "italic");
        else if (face == Face.Mono)
            _xml.WriteAttributeString("font-family", "'IBM Plex Mono', monospace");
    }

    private void Dress(Look look)
    {
        _xml.WriteAttributeString("fill", look.Fill is { } ink ? Inks.Colour(ink) : "none");
        if (look.Stroke is { } stroke)
        {
            _xml.WriteAttributeString("stroke", Inks.Colour(stroke.Ink));
            Attributes(("stroke-width", stroke.Width));
            if (stroke.Dash is { } dash)
                _xml.WriteAttributeString("stroke-dasharray", Number(dash));
        }

        var classes = (look.Fill is { } fill ? $"fill-{Name(fill)} " : "") + (look.Stroke is { } line ? $"line-{Name(line.Ink)}" : "");
        _xml.WriteAttributeString("class", classes.Trim());
        _xml.WriteEndElement();
    }

    private void Attributes(params ReadOnlySpan<(string Name, double Value)> attributes)
    {
        foreach (var (name, value) in attributes)
            _xml.WriteAttributeString(name, Number(value));
    }

    private static string Name(Ink ink) => Enum.GetName(ink)!.ToLowerInvariant();

    private static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    private sealed class End(XmlWriter xml) : IDisposable
    {
        public void Dispose() => xml.WriteEndElement();
    }
}
