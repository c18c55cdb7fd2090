using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Acoustics;

/// <summary>Whether an edge stands between a source and an ear, and by how much the way round it is longer.</summary>
internal static class ScreenGeometry
{
    /// <summary>How far a desk's top reaches back where nobody wrote it [m]: common practice, no source.</summary>
    public const double AssumedDepth = 0.8;

    /// <summary>The path difference [m]: positive behind the edge, negative where it nearly is; null where the edge has nothing to do with it.</summary>
    public static double? PathDifference(Screen screen, Spot source, Spot ear)
    {
        var (from, to) = (screen.From.Value, screen.To.Value);
        var (along, across) = ((X: to.X - from.X, Y: to.Y - from.Y), Math.Sqrt(Square(to.X - from.X) + Square(to.Y - from.Y)));
        if (across < 1e-6)
            return null;
        var (u, v) = (along.X / across, along.Y / across);
        var height = (from.Z + to.Z) / 2;
        var s = (Off: (source.X - from.X) * -v + (source.Y - from.Y) * u, Along: (source.X - from.X) * u + (source.Y - from.Y) * v, Up: source.Z - height);
        var e = (Off: (ear.X - from.X) * -v + (ear.Y - from.Y) * u, Along: (ear.X - from.X) * u + (ear.Y - from.Y) * v, Up: ear.Z - height);
        if (s.Off * e.Off >= 0)
            return null;
        var share = Math.Abs(s.Off) / (Math.Abs(s.Off) + Math.Abs(e.Off));
        var crossing = s.Along + (e.Along - s.Along) * share;
        if (crossing < 0 || crossing > across)
            return null;
        var round = Math.Sqrt(Square(Length(s.Off, s.Up) + Length(e.Off, e.Up)) + Square(e.Along - s.Along));
        var straight = Math.Sqrt(Square(e.Off - s.Off) + Square(e.Up - s.Up) + Square(e.Along - s.Along));
        var longer = Math.Max(0, round - straight);
        var stands = screen.Kind == "desk"
            ? Desk((s.Off, s.Up), (e.Off, e.Up), screen.Depth?.Value.Value ?? AssumedDepth)
            : s.Up + (e.Up - s.Up) * share < 0;
        return stands is { } yes ? yes ? longer : -longer : null;
    }

    // The top lies on the source's side of the edge: the straight way goes through it, past its edge, or behind it.
    private static bool? Desk((double Off, double Up) source, (double Off, double Up) ear, double depth)
    {
        if (source.Up >= 0 || ear.Up <= 0)
            return null;
        var where = source.Off + (ear.Off - source.Off) * -source.Up / (ear.Up - source.Up);
        return where * source.Off < 0 ? false : Math.Abs(where) <= depth ? true : null;
    }

    private static double Length(double x, double y) => Math.Sqrt(x * x + y * y);

    private static double Square(double x) => x * x;
}
