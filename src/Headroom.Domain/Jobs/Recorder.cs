using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>That an endpoint keeps the pictures of cameras.</summary>
/// <param name="Disks">How many disks it has; null when not known.</param>
/// <param name="DiskSize">What one holds [octets]; null when not known.</param>
/// <param name="Parity">How many of them only guard against the loss of others; null when none is said.</param>
/// <param name="Free">Share that is kept free; null when not written.</param>
/// <param name="Keep">How long pictures are to be kept [s]; null when nobody asked.</param>
/// <param name="Written">Share of the time in which pictures are written; null for all of it.</param>
/// <param name="Records">The endpoints whose pictures it keeps; empty for all that send any.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Recorder(
    int? Disks,
    Given<Octets>? DiskSize,
    int? Parity,
    Given<Share>? Free,
    Given<Seconds>? Keep,
    Given<Share>? Written,
    IReadOnlyList<string> Records,
    Place At);
