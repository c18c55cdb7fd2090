namespace Headroom.Desk.Shown;

/// <summary>A row of a ledger with its bar.</summary>
/// <param name="Row">The words and figures.</param>
/// <param name="Unit">The unit of what is asked and there is.</param>
/// <param name="Bar">The bar as a drawing; empty where a question stands in its place.</param>
/// <param name="Remarks">What interval or overruling adds.</param>
public sealed record LedgerLine(KeptRow Row, string Unit, string Bar, IReadOnlyList<string> Remarks);
