using System.Globalization;
using Headroom.Documents.Canvas;

namespace Headroom.Documents.Drawings.Plates;

/// <summary>The scale of a drawing, one of those that technical drawings have (ISO 5455).</summary>
/// <param name="Ratio">How many times the thing is as large as its drawing [1].</param>
public readonly record struct DrawingScale(double Ratio)
{
    private const double PointsPerMetre = 72 / 0.0254;

    private static readonly double[] Ratios = [5, 10, 20, 50, 100, 200, 500, 1000, 2000];

    /// <summary>How it is written: <c>1:50</c>.</summary>
    public string Written => string.Create(CultureInfo.InvariantCulture, $"1:{Ratio:0}");

    /// <summary>The largest scale at which something has room.</summary>
    /// <param name="widthMetres">Its width [m].</param>
    /// <param name="heightMetres">Its height [m].</param>
    /// <param name="room">The room.</param>
    public static DrawingScale For(double widthMetres, double heightMetres, Box room)
    {
        foreach (var ratio in Ratios)
        {
            var scale = new DrawingScale(ratio);
            if (scale.Points(widthMetres) <= room.Width && scale.Points(heightMetres) <= room.Height)
                return scale;
        }

        return new DrawingScale(Ratios[^1]);
    }

    /// <summary>A length on the drawing.</summary>
    /// <param name="metres">The length [m].</param>
    /// <returns>On the drawing [pt].</returns>
    public double Points(double metres) => metres * PointsPerMetre / Ratio;
}
