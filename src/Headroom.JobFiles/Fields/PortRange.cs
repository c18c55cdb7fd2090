namespace Headroom.JobFiles.Fields;

/// <summary>Ports beside each other, by the numbers printed on them.</summary>
/// <param name="First">The lowest, from 1.</param>
/// <param name="Last">The highest; the same as the first for one port.</param>
internal sealed record PortRange(int First, int Last);
