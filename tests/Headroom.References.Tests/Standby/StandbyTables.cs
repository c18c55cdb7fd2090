namespace Headroom.References.Tests.Standby;

/// <summary>The tables of standby power, in the order of the reference.</summary>
internal static class StandbyTables
{
    internal static IReadOnlyList<PrintedTable> All { get; } =
    [
        Of("Watts and volt-amperes of a load (runtime 1.2)", "standby-load", StandbyLoadFigures.Work),
        Of("Cold, warmth and life of a battery (runtime 1.2)", "standby-temperature", TemperatureFigures.Work),
        Of("Constant-power table (runtime 1.3)", "standby-table", TableFigures.Work),
        Of("Batteries by current (runtime 1.4)", "standby-current", CurrentFigures.Work),
        Of("Lithium, midspans, charging, generators (runtime 1.5)", "standby-other", OtherFigures.Work),
        Of("Loads in stages (runtime 1.6)", "standby-stages", StageFigures.Work),
    ];

    private static PrintedTable Of(string heading, string file, Func<Printed, Figure> work) => new(heading, file, work) { Reference = "runtime" };
}
