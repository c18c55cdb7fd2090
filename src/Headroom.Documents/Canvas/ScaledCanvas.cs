using Headroom.Domain.Firms;

namespace Headroom.Documents.Canvas;

/// <summary>Draws smaller or larger on another canvas.</summary>
/// <param name="canvas">The other.</param>
/// <param name="origin">Where its upper left corner lies.</param>
/// <param name="scale">How many times as large.</param>
internal sealed class ScaledCanvas(ICanvas canvas, Spot origin, double scale) : ICanvas
{
    /// <inheritdoc/>
    public void Line(Spot from, Spot to, Stroke stroke) => canvas.Line(At(from), At(to), Of(stroke));

    /// <inheritdoc/>
    public void Rect(Box box, Look look)
    {
        var corner = At(new(box.X, box.Y));
        canvas.Rect(new(corner.X, corner.Y, box.Width * scale, box.Height * scale), Of(look));
    }

    /// <inheritdoc/>
    public void Circle(Spot middle, double radius, Look look) => canvas.Circle(At(middle), radius * scale, Of(look));

    /// <inheritdoc/>
    public void Poly(IReadOnlyList<Spot> spots, bool closed, Look look) => canvas.Poly([.. spots.Select(At)], closed, Of(look));

    /// <inheritdoc/>
    public void Text(string text, Spot at, Lettering lettering) => canvas.Text(text, At(at), lettering with { Size = lettering.Size * scale });

    /// <inheritdoc/>
    public void Art(Artwork art, Box box)
    {
        var corner = At(new(box.X, box.Y));
        canvas.Art(art, new(corner.X, corner.Y, box.Width * scale, box.Height * scale));
    }

    /// <inheritdoc/>
    public IDisposable Part(string title) => canvas.Part(title);

    private Spot At(Spot spot) => new(origin.X + spot.X * scale, origin.Y + spot.Y * scale);

    private Stroke Of(Stroke stroke) => stroke with { Width = stroke.Width * scale, Dash = stroke.Dash * scale };

    private Look Of(Look look) => look.Stroke is { } stroke ? look with { Stroke = Of(stroke) } : look;
}
