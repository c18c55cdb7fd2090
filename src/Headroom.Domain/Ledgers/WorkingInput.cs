namespace Headroom.Domain.Ledgers;

/// <summary>One input of a working.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">The value; null when not known.</param>
/// <param name="Unit">Its unit; empty for a plain number.</param>
/// <param name="Origin">Where it comes from, in words: <c>measured, job.yaml:12:5</c>.</param>
public sealed record WorkingInput(string Name, double? Value, string Unit, string Origin);
