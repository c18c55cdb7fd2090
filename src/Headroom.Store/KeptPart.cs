namespace Headroom.Store;

/// <summary>Something kept with a revision as it was when the revision was worked out: a ledger, the models, the prices.</summary>
/// <param name="Kind">What it is: <c>ledger/as-quoted</c>, <c>models</c>, <c>rates</c>.</param>
/// <param name="Bytes">Its bytes.</param>
public sealed record KeptPart(string Kind, ReadOnlyMemory<byte> Bytes);
