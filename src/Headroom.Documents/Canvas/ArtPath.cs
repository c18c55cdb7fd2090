using Headroom.Domain.Firms;
using PdfSharp.Drawing;

namespace Headroom.Documents.Canvas;

/// <summary>Draws the picture of a firm on a sheet of a PDF.</summary>
internal static class ArtPath
{
    /// <summary>Draws it as large as the box is.</summary>
    public static void Draw(XGraphics graphics, Artwork art, Box box)
    {
        if (!art.Png.IsEmpty)
        {
            using var stream = new MemoryStream(art.Png.ToArray());
            using var image = XImage.FromStream(stream);
            graphics.DrawImage(image, box.X, box.Y, box.Width, box.Height);
            return;
        }

        var scale = box.Width / art.Width;
        foreach (var shape in art.Shapes)
        {
            var path = new XGraphicsPath { FillMode = shape.EvenOdd ? XFillMode.Alternate : XFillMode.Winding };
            foreach (var line in shape.Lines)
            {
                path.StartFigure();
                path.AddLines([.. line.Corners.Select(corner => new XPoint(box.X + corner.X * scale, box.Y + corner.Y * scale))]);
                if (line.Closed)
                    path.CloseFigure();
            }

            var brush = shape.Fill is { } fill ? new XSolidBrush(Colour(fill)) : null;
            if (shape.Stroke is { } stroke)
                graphics.DrawPath(new XPen(Colour(stroke), shape.StrokeWidth * scale), brush, path);
            else if (brush is not null)
                graphics.DrawPath(brush, path);
        }
    }

    /// <summary>What stands in the way of drawing it; null when nothing does.</summary>
    public static string? Complaint(Artwork art)
    {
        if (art.Png.IsEmpty)
            return null;
        try
        {
            using var stream = new MemoryStream(art.Png.ToArray());
            using var image = XImage.FromStream(stream);
            return image.PixelWidth > 0 ? null : "it has no points";
        }
        catch (Exception reason) when (reason is not OutOfMemoryException)
        {
            return "it is damaged, or a kind of PNG that cannot be drawn";
        }
    }

    private static XColor Colour(string colour) => XColor.FromArgb(Convert.ToInt32(colour[1..3], 16), Convert.ToInt32(colour[3..5], 16), Convert.ToInt32(colour[5..7], 16));
}
