using System.Globalization;
using Headroom.Documents.Canvas;

namespace Headroom.Documents.Drawings.Plates;

/// <summary>The scale of a drawing, one of those that technical drawings have (ISO 5455), or one of inches to the foot (common practice, no source).</summary>
/// <param name="Ratio">How many times the thing is as large as its drawing [1].</param>
/// <param name="Imperial">True for inches to the foot.</param>
public readonly record struct DrawingScale(double Ratio, bool Imperial = false)
{
    private const double PointsPerMetre = 72 / 0.0254;
    private const double FootMetres = 0.3048;

    private static readonly double[] Ratios = [5, 10, 20, 50, 100, 200, 500, 1000, 2000];

    private static readonly (double Ratio, string Written)[] InchRatios =
    [
        (8, "1 1/2 in = 1 ft"), (12, "1 in = 1 ft"), (16, "3/4 in = 1 ft"), (24, "1/2 in = 1 ft"), (48, "1/4 in = 1 ft"), (96, "1/8 in = 1 ft"), (192, "1/16 in = 1 ft"),
        (480, "1 in = 40 ft"), (1200, "1 in = 100 ft"), (2400, "1 in = 200 ft"),
    ];

    /// <summary>How it is written: <c>1:50</c>, or <c>1/4 in = 1 ft</c>.</summary>
    public string Written
    {
        get
        {
            var ratio = Ratio;
            return Imperial && Array.Find(InchRatios, one => one.Ratio == ratio).Written is { } inches ? inches : string.Create(CultureInfo.InvariantCulture, $"1:{Ratio:0}");
        }
    }

    /// <summary>A round length that is about an inch on the drawing [m].</summary>
    public double RoundMetres => Imperial ? Math.Max(1, Math.Floor(Ratio / 12)) * FootMetres
        : Ratio switch { <= 10 => 0.2, <= 20 => 0.5, <= 50 => 1, <= 100 => 2, <= 200 => 5, _ => Ratio / 40 };

    /// <summary>The largest scale at which something has room.</summary>
    /// <param name="widthMetres">Its width [m].</param>
    /// <param name="heightMetres">Its height [m].</param>
    /// <param name="room">The room.</param>
    /// <param name="imperial">True for inches to the foot.</param>
    public static DrawingScale For(double widthMetres, double heightMetres, Box room, bool imperial = false)
    {
        IReadOnlyList<double> ratios = imperial ? [.. InchRatios.Select(one => one.Ratio)] : Ratios;
        foreach (var ratio in ratios)
        {
            var scale = new DrawingScale(ratio, imperial);
            if (scale.Points(widthMetres) <= room.Width && scale.Points(heightMetres) <= room.Height)
                return scale;
        }

        return new DrawingScale(ratios[^1], imperial);
    }

    /// <summary>A length on the drawing.</summary>
    /// <param name="metres">The length [m].</param>
    /// <returns>On the drawing [pt].</returns>
    public double Points(double metres) => metres * PointsPerMetre / Ratio;
}
