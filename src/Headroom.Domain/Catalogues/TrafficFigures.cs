using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>What a device asks of the network. Each part that is not written is nothing, as long as one is; a device without any is not known.</summary>
/// <param name="Stream">What it sends all the time, such as a camera's pictures [bit/s]; null when nothing.</param>
/// <param name="CallShare">Share of the busy hour it is on the telephone; null when it makes no calls.</param>
/// <param name="Users">People on it; null when nobody.</param>
/// <param name="ActiveShare">Share of them that load something at one moment; null when not known.</param>
/// <param name="Down">What one of those takes [bit/s]; null when not known.</param>
/// <param name="Up">What one of those sends [bit/s]; null when nothing.</param>
/// <param name="At">Where it is written.</param>
public sealed record TrafficFigures(
    Given<BitsPerSecond>? Stream,
    Given<Share>? CallShare,
    int? Users,
    Given<Share>? ActiveShare,
    Given<BitsPerSecond>? Down,
    Given<BitsPerSecond>? Up,
    Place At);
