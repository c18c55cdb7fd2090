using System.Runtime.Intrinsics;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Acoustics;

/// <summary>One source over a mesh: what does not change from point to point is worked out once, so that a point costs a division and no power of ten.</summary>
internal sealed class MeshSource
{
    // Nobody holds an ear closer [m²].
    private const double LeastSquare = 0.01;

    private readonly Spot? _spot;
    // The eight octaves side by side: shares of the energy, and ten Fresnel numbers for each metre of path difference.
    private readonly Vector256<float> _bands;
    private readonly Vector256<float> _edge;
    private readonly ScreenGeometry[] _screens;
    private readonly double _all;

    /// <summary>Prepares a source.</summary>
    public MeshSource(Contribution one, Screen[] screens)
    {
        _spot = one.Path.Spot;
        _screens = _spot is { } at ? Array.ConvertAll(screens, screen => new ScreenGeometry(screen, at)) : [];
        var energy = Levels.Energy(one.Power.Power!.Value.Value);
        var open = one.Path.Directivity / (4 * Math.PI) * Levels.Energy(-one.Path.Loss);
        _all = energy * open;
        for (var band = 0; band < Octaves.Count; band++)
        {
            _bands = _bands.WithElement(band, (float)one.Power.Weights[band]);
            _edge = _edge.WithElement(band, (float)(10 * EdgeDiffraction.Fresnel(1, Octaves.Hertz[band])));
            Returned += energy * one.Power.Weights[band] * one.Path.Returned[band];
        }
    }

    /// <summary>Energy that the room gives back, everywhere alike.</summary>
    public double Returned { get; }

    /// <summary>Energy that comes straight to a point.</summary>
    public double Direct(Spot point)
    {
        if (_spot is not { } spot)
            return 0;
        var (x, y, z) = (spot.X - point.X, spot.Y - point.Y, spot.Z - point.Z);
        var share = 1 / Math.Max(LeastSquare, x * x + y * y + z * z);
        double? longest = null;
        foreach (var screen in _screens)
        {
            if (screen.PathDifference(point) is { } longer && !(longer <= longest))
                longest = longer;
        }

        return share * (longest is { } difference ? Past(difference) : _all);
    }

    // The rule of EdgeDiffraction.StandardShare for all octaves at once; seven digits of a share are more than anybody hears.
    private double Past(double difference)
    {
        var below = Vector256.Create(3f) + _edge * (float)difference;
        return _all * Vector256.Sum(_bands / Vector256.Min(Vector256.Create(100f), Vector256.Max(Vector256.Create(1f), below)));
    }
}
