namespace Headroom.Domain.Ledgers;

/// <summary>The value of one input at which the limit, and the reserve, are just kept, the others staying as they are.</summary>
/// <param name="Input">The input in words: <c>length of the run</c>.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Now">What it is now; null when not known.</param>
/// <param name="AtLimit">The value at the limit; null when no value of it reaches the limit, or none keeps it.</param>
/// <param name="AtReserve">The value at the reserve; null likewise.</param>
/// <param name="UpTo">True when the limit is kept up to the value, false when from the value on.</param>
public sealed record Holds(string Input, string Unit, double? Now, double? AtLimit, double? AtReserve, bool UpTo = true);
