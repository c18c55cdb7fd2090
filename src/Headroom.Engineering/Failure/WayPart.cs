namespace Headroom.Engineering.Failure;

/// <summary>One part of the way of an endpoint.</summary>
/// <param name="Name">What it is.</param>
/// <param name="HoursBetween">Mean time between failures [h]; null when not known or when the share was written.</param>
/// <param name="Share">Share of the time that it works [1]; null when not known.</param>
/// <param name="Origin">Where that comes from.</param>
internal sealed record WayPart(string Name, double? HoursBetween, double? Share, string Origin);
