using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Acoustics;

/// <summary>One source over a mesh: what does not change from point to point is worked out once, so that a point costs a division and no power of ten.</summary>
internal sealed class MeshSource
{
    // Nobody holds an ear closer [m²].
    private const double LeastSquare = 0.01;

    private readonly Spot? _spot;
    private readonly double[] _bands = new double[Octaves.Count];
    private readonly double _all;

    /// <summary>Prepares a source.</summary>
    public MeshSource(Contribution one)
    {
        _spot = one.Path.Spot;
        var energy = Levels.Energy(one.Power.Power!.Value.Value);
        var open = one.Path.Directivity / (4 * Math.PI) * Levels.Energy(-one.Path.Loss);
        for (var band = 0; band < Octaves.Count; band++)
        {
            _all += _bands[band] = energy * one.Power.Weights[band] * open;
            Returned += energy * one.Power.Weights[band] * one.Path.Returned[band];
        }
    }

    /// <summary>Energy that the room gives back, everywhere alike.</summary>
    public double Returned { get; }

    /// <summary>Energy that comes straight to a point.</summary>
    public double Direct(Spot point, Screen[] screens)
    {
        if (_spot is not { } spot)
            return 0;
        var (x, y, z) = (spot.X - point.X, spot.Y - point.Y, spot.Z - point.Z);
        var share = 1 / Math.Max(LeastSquare, x * x + y * y + z * z);
        double? longest = null;
        foreach (var screen in screens)
        {
            if (ScreenGeometry.PathDifference(screen, spot, point) is { } longer && !(longer <= longest))
                longest = longer;
        }

        return share * (longest is { } difference ? Past(difference) : _all);
    }

    private double Past(double difference)
    {
        var sum = 0.0;
        for (var band = 0; band < Octaves.Count; band++)
            sum += _bands[band] * EdgeDiffraction.StandardShare(EdgeDiffraction.Fresnel(difference, Octaves.Hertz[band]));
        return sum;
    }
}
