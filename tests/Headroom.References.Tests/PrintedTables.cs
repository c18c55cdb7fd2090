using Headroom.References.Tests.MeasuredDraws;
using Headroom.References.Tests.Office;
using Headroom.References.Tests.PowerAndCabling;
using Headroom.References.Tests.Sound;
using Headroom.References.Tests.Standby;

namespace Headroom.References.Tests;

/// <summary>Every table that is checked, in the order of the reference.</summary>
internal static class PrintedTables
{
    internal static IReadOnlyList<PrintedTable> All { get; } =
    [
        new("Types of power over Ethernet (1.1)", "802.3-types", TypeFigures.Work),
        new("Classes, one signature (1.2)", "802.3-classes", ClassFigures.Work),
        new("Classes, two signatures (1.3)", "802.3-dual-signature-classes", DualClassFigures.Work),
        new("Device power from source power (1.4)", "802.3-class-derivation", DerivationFigures.Work),
        new("Class assignment (1.5)", "802.3-class-assignment", AssignmentFigures.Work),
        new("Detection and classification (1.6)", "802.3-detection-and-classification", DetectionFigures.Work),
        new("Start-up, overload and keep-alive (1.7)", "802.3-start-up-and-keep-alive", StartUpFigures.Work),
        new("Power over LLDP (1.8)", "lldp-power", LldpFigures.Work),
        new("Reservation for an allocation (1.9)", "802.3-reservation", ReservationFigures.Work),
        new("Constant-power load behind a loop (2)", "constant-power-load", LoadFigures.Work),
        new("Conductor (3.1)", "conductor", ConductorFigures.Work),
        new("Copper channels (3.2)", "channel", ChannelFigures.Work),
        new("Cords (3.3)", "cords", CordFigures.Work),
        new("Warm cable (3.4)", "warm-cable", WarmCableFigures.Work),
        new("Bundles (4)", "bundles", BundleFigures.Work),
        new("Passive injection (5)", "passive-injection", PassiveFigures.Work),
        new("Power budgets (6.1, 6.2)", "power-budget", BudgetFigures.Work),
        new("Supplies and heat (6.4)", "supplies-and-heat", SupplyFigures.Work),
        new("Switching capacity (7)", "switching", SwitchingFigures.Work),
        new("Fibre (8)", "fibre", FibreFigures.Work),
        new("Conduits, trays, pulling (9.1)", "pathways", PathwayFigures.Work),
        new("Separation from mains (9.2)", "separation", SeparationFigures.Work),
        new("Racks (10)", "racks", RackFigures.Work),
        .. SoundTables.All,
        .. StandbyTables.All,
        new("Failures, spares, availability (runtime 2)", "reliability", Runtime.ReliabilityFigures.Work) { Reference = "runtime" },
        new("Traffic (runtime 3)", "traffic", Runtime.TrafficFigures.Work) { Reference = "runtime" },
        .. MeasuredTables.All,
        new("Addresses (runtime 4)", "runtime-addresses", AddressFigures.Work) { Reference = "runtime" },
        new("Money (runtime 7)", "runtime-money", MoneyFigures.Work) { Reference = "runtime" },
    ];

    /// <summary>For a figure that nothing works out: it fails its test by this name.</summary>
    internal static Figure Nothing(Printed printed) => throw new NotSupportedException($"Nothing works out {printed.Name}.");
}
