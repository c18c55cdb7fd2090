using Headroom.Domain.Ledgers;

namespace Headroom.Documents.Drawings.Traffic;

/// <summary>A row of the tree of uplinks: a line or a switch with the limits of its way to the one above it.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Beside">What it is.</param>
/// <param name="Depth">How many rows are above it on its way to the line.</param>
/// <param name="Ways">Its limits, each with the word for the way.</param>
/// <param name="Above">The number of the row above it; null for a root.</param>
internal sealed record TreeRow(string Name, string Beside, int Depth, IReadOnlyList<(string Way, LedgerEntry? Entry)> Ways, int? Above);
