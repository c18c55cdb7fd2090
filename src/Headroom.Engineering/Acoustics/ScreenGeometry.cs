using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Acoustics;

/// <summary>An edge as a source sees it: whether it stands between the source and an ear, and by how much the way round it is longer.</summary>
internal sealed class ScreenGeometry
{
    /// <summary>How far a desk's top reaches back where nobody wrote it [m]: common practice, no source.</summary>
    public const double AssumedDepth = 0.8;

    private readonly Spot _from;
    private readonly double _length;
    private readonly double _x;
    private readonly double _y;
    private readonly double _height;
    private readonly double? _desk;
    private readonly (double Off, double Along, double Up) _source;
    private readonly double _toEdge;

    /// <summary>Prepares an edge for a source.</summary>
    public ScreenGeometry(Screen screen, Spot source)
    {
        var (from, to) = (screen.From.Value, screen.To.Value);
        _from = from;
        _length = Length(to.X - from.X, to.Y - from.Y);
        (_x, _y) = _length > 0 ? ((to.X - from.X) / _length, (to.Y - from.Y) / _length) : (1, 0);
        _height = (from.Z + to.Z) / 2;
        _desk = screen.Kind == "desk" ? screen.Depth?.Value.Value ?? AssumedDepth : null;
        _source = Seen(source);
        _toEdge = Length(_source.Off, _source.Up);
    }

    /// <summary>The path difference to an ear [m]: positive behind the edge, negative where it nearly is; null where the edge has nothing to do with it.</summary>
    public double? PathDifference(Spot ear)
    {
        var e = Seen(ear);
        if (_source.Off * e.Off >= 0)
            return null;
        var share = _source.Off / (_source.Off - e.Off);
        var crossing = _source.Along + (e.Along - _source.Along) * share;
        if (crossing < 0 || crossing > _length || Stands(e.Off, e.Up, share) is not { } stands)
            return null;
        var along = e.Along - _source.Along;
        var round = Length(_toEdge + Length(e.Off, e.Up), along);
        var straight = Math.Sqrt((e.Off - _source.Off) * (e.Off - _source.Off) + (e.Up - _source.Up) * (e.Up - _source.Up) + along * along);
        var longer = Math.Max(0, round - straight);
        return stands ? longer : -longer;
    }

    // A screen is closed below its edge. The top of a desk lies on the source's side of its edge: the straight way goes through it, past its edge, or behind it.
    private bool? Stands(double off, double up, double share)
    {
        if (_desk is not { } depth)
            return _source.Up + (up - _source.Up) * share < 0;
        if (_source.Up >= 0 || up <= 0)
            return null;
        var where = _source.Off + (off - _source.Off) * -_source.Up / (up - _source.Up);
        return where * _source.Off < 0 ? false : Math.Abs(where) <= depth ? true : null;
    }

    // Away from the edge, along it, and above it.
    private (double Off, double Along, double Up) Seen(Spot spot)
    {
        var (x, y) = (spot.X - _from.X, spot.Y - _from.Y);
        return (y * _x - x * _y, x * _x + y * _y, spot.Z - _height);
    }

    private static double Length(double x, double y) => Math.Sqrt(x * x + y * y);
}
