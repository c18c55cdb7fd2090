namespace Headroom.Engineering.Sums;

/// <summary>What was read of the words that follow the name of a sum.</summary>
/// <param name="Given">What the sum was given; null when something is wrong.</param>
/// <param name="Complaints">All that is wrong, each a line: what, what was given, what is allowed, what to do; empty when nothing.</param>
public sealed record SumReading(SumGiven? Given, IReadOnlyList<string> Complaints);
