namespace Headroom.Desk.Shown;

/// <summary>An entry of the ledger before and after a move.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Subject">What it is about.</param>
/// <param name="What">What it is a limit of.</param>
/// <param name="Before">Asked and left before; what stood there when there was nothing of it.</param>
/// <param name="After">The same after.</param>
/// <param name="Was">The verdict before; empty when there was none.</param>
/// <param name="Is">The verdict after; empty when there is none.</param>
/// <param name="Better">True when it got better, false when worse, null when it is only different.</param>
public sealed record EntryEffect(string Id, string Subject, string What, string Before, string After, string Was, string Is, bool? Better);
