namespace Headroom.References.Tests.MeasuredDraws;

/// <summary>The tables of measured draws, in the order of the reference.</summary>
internal static class MeasuredTables
{
    internal static IReadOnlyList<PrintedTable> All { get; } =
    [
        new("Draws read at sites (runtime 5.2)", "measured-sites", SiteFigures.Work) { Reference = "runtime" },
        new("Draws in states, by convolution (runtime 5.4)", "measured-states", StateFigures.Work) { Reference = "runtime" },
    ];
}
