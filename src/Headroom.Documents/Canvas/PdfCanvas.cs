using System.Diagnostics.CodeAnalysis;
using Headroom.Documents.Letters;
using Headroom.Domain.Firms;
using PdfSharp.Drawing;

namespace Headroom.Documents.Canvas;

/// <summary>Draws on a sheet of a PDF.</summary>
/// <param name="graphics">The sheet.</param>
/// <param name="house">The firm's colour, as <c>#rrggbb</c>; null for ink.</param>
internal sealed class PdfCanvas(XGraphics graphics, string? house) : ICanvas
{
    private readonly Dictionary<Ink, XSolidBrush> _brushes = [];

    /// <inheritdoc/>
    public void Line(Spot from, Spot to, Stroke stroke) => graphics.DrawLine(Pen(stroke), Point(from), Point(to));

    /// <inheritdoc/>
    public void Rect(Box box, Look look) => graphics.DrawRectangle(Pen(look.Stroke), Brush(look.Fill), new XRect(box.X, box.Y, Math.Max(0, box.Width), Math.Max(0, box.Height)));

    /// <inheritdoc/>
    public void Circle(Spot middle, double radius, Look look) =>
        graphics.DrawEllipse(Pen(look.Stroke), Brush(look.Fill), new XRect(middle.X - radius, middle.Y - radius, 2 * radius, 2 * radius));

    /// <inheritdoc/>
    public void Poly(IReadOnlyList<Spot> spots, bool closed, Look look)
    {
        XPoint[] points = [.. spots.Select(Point)];
        if (closed)
            graphics.DrawPolygon(Pen(look.Stroke), Brush(look.Fill), points, XFillMode.Winding);
        else if (look.Stroke is { } stroke)
            graphics.DrawLines(Pen(stroke), points);
    }

    /// <inheritdoc/>
    public void Text(string text, Spot at, Lettering lettering)
    {
        var shift = lettering.Anchor == Anchor.Start ? 0 : Typeface.Width(text, lettering) * (lettering.Anchor == Anchor.Middle ? 0.5 : 1);
        if (lettering.Turned == 0)
        {
            Write(text, at.By(-shift, 0), lettering);
            return;
        }

        var state = graphics.Save();
        graphics.RotateAtTransform(lettering.Turned, Point(at));
        Write(text, at.By(-shift, 0), lettering);
        graphics.Restore(state);
    }

    /// <inheritdoc/>
    public void Art(Artwork art, Box box) => ArtPath.Draw(graphics, art, box);

    /// <inheritdoc/>
    public IDisposable Part(string title) => Nothing.Instance;

    private void Write(string text, Spot at, Lettering lettering)
    {
        foreach (var (face, run) in Typeface.Runs(text, lettering.Face))
        {
            graphics.DrawString(run, FontShelf.Of(face, lettering.Size), Brush(lettering.Ink), Point(at), XStringFormats.BaseLineLeft);
            at = at.By(Typeface.Width(run, lettering with { Face = face }), 0);
        }
    }

    private static XPoint Point(Spot spot) => new(spot.X, spot.Y);

    [return: NotNullIfNotNull(nameof(stroke))]
    private XPen? Pen(Stroke? stroke)
    {
        if (stroke is null)
            return null;
        var pen = new XPen(Colour(stroke.Ink), stroke.Width) { LineJoin = XLineJoin.Miter };
        if (stroke.Dash is { } dash)
            pen.DashPattern = [dash / stroke.Width, dash / stroke.Width];
        return pen;
    }

    [return: NotNullIfNotNull(nameof(ink))]
    private XSolidBrush? Brush(Ink? ink)
    {
        if (ink is not { } known)
            return null;
        if (!_brushes.TryGetValue(known, out var brush))
            _brushes[known] = brush = new XSolidBrush(Colour(known));
        return brush;
    }

    private XColor Colour(Ink ink)
    {
        var colour = ink == Ink.House && house is not null ? house : Inks.Colour(ink);
        return XColor.FromArgb(Convert.ToInt32(colour[1..3], 16), Convert.ToInt32(colour[3..5], 16), Convert.ToInt32(colour[5..7], 16));
    }

    private sealed class Nothing : IDisposable
    {
        public static Nothing Instance { get; } = new();

        public void Dispose()
        {
        }
    }
}
