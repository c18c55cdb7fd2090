using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>A recorder with the pictures it takes.</summary>
/// <param name="Endpoint">The endpoint that it is.</param>
/// <param name="Recorder">Its disks and rules.</param>
/// <param name="Records">The endpoints whose pictures it keeps.</param>
public sealed record RecorderTraffic(BoundEndpoint Endpoint, Recorder Recorder, IReadOnlyList<BoundEndpoint> Records)
{
    /// <summary>What is kept free where nobody wrote it [1]: common practice, no source.</summary>
    public const double UsualFree = 0.1;

    /// <summary>The pictures of all together [bit/s]; those that are known.</summary>
    public double BitsPerSecond => Records.Sum(one => TrafficStudy.FiguresOf(one)?.Stream?.Value.Value ?? 0);

    /// <summary>Those whose pictures are not known.</summary>
    public IReadOnlyList<BoundEndpoint> NotKnown => [.. Records.Where(one => TrafficStudy.FiguresOf(one)?.Stream is null)];

    /// <summary>Share of the time in which pictures are written [1].</summary>
    public double Written => Recorder.Written?.Value.Value is > 0 and var share ? share : 1;

    /// <summary>Share kept free [1].</summary>
    public double Free => Recorder.Free?.Value.Value ?? UsualFree;

    /// <summary>What its disks hold [octets]; null when disks or their size are not known.</summary>
    public double? UsableOctets => Recorder is { Disks: { } disks, DiskSize: { } size } ? Recording.UsableOctets(disks, Recorder.Parity ?? 0, size.Value.Value, Free) : null;

    /// <summary>How long it keeps pictures [d]; null when something is not known.</summary>
    public double? Days => NotKnown.Count == 0 && BitsPerSecond > 0 && UsableOctets is { } usable ? Recording.Days(usable, Recording.OctetsADay(BitsPerSecond, Written)) : null;
}
