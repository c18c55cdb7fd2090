namespace Headroom.Domain.Ledgers;

/// <summary>One step of a working.</summary>
/// <param name="Name">What it gives.</param>
/// <param name="Sum">The sum with its numbers in place, or a remark where there is no number.</param>
/// <param name="Value">What it comes to; null for a remark.</param>
/// <param name="Unit">The unit; empty for a plain number.</param>
public sealed record WorkingStep(string Name, string Sum, double? Value, string Unit);
