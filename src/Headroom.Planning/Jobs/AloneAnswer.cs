using Headroom.Domain.Ledgers;

namespace Headroom.Planning.Jobs;

/// <summary>What a unit comes to by itself in a place.</summary>
/// <param name="Entry">What it already breaks or leaves unknown; null when nothing.</param>
/// <param name="Heard">What is heard of it at each listener where that is known [dB(A)].</param>
internal sealed record AloneAnswer(LedgerEntry? Entry, IReadOnlyDictionary<string, double> Heard);
