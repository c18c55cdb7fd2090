namespace Headroom.Desk.Shown;

/// <summary>An entry in two ledgers.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Before">The verdict in the first; <c>not there</c> when it has none.</param>
/// <param name="After">The verdict in the second; likewise.</param>
/// <param name="Left">What is left in both, in words.</param>
/// <param name="InSecond">True when the second ledger has it.</param>
public sealed record EntryDifference(string Id, string Before, string After, string Left, bool InSecond);
