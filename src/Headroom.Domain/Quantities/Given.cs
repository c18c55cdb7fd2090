using Headroom.Domain.Findings;

namespace Headroom.Domain.Quantities;

/// <summary>A value as somebody wrote it down: what it is, how it was written, where it came from and where it stands.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Value">The value; the middle where a range was written.</param>
/// <param name="Written">The text as written, with its unit.</param>
/// <param name="Origin">Where the value comes from, as far as the text says.</param>
/// <param name="PlusMinus">Half the interval, in the quantity's base unit; null when none was written.</param>
/// <param name="At">Where it stands.</param>
public sealed record Given<T>(T Value, string Written, Origin Origin, double? PlusMinus, Place At)
    where T : struct;
