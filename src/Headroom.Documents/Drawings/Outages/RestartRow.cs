namespace Headroom.Documents.Drawings.Outages;

/// <summary>One row of the restart.</summary>
/// <param name="Name">Who.</param>
/// <param name="Kind">What the row shows.</param>
/// <param name="From">When its bar begins [s].</param>
/// <param name="To">When its bar ends [s].</param>
/// <param name="Known">False when it is then or later.</param>
/// <param name="Beside">What stands beside its bar.</param>
internal sealed record RestartRow(string Name, RestartRowKind Kind, double From, double To, bool Known, string Beside);
