using Headroom.Engineering.Remedies.Kinds;

namespace Headroom.Engineering.Remedies;

/// <summary>All kinds of remedies, those that buy nothing first.</summary>
internal static class RemedyKinds
{
    /// <summary>The kinds.</summary>
    public static IReadOnlyList<IRemedyKind> All { get; } =
    [
        new ReservingWay(), new PortLimits(), new ServedFirst(), new StrongerPort(), new OtherSwitch(), new EarlierShedding(), new LowerStream(), new FanSpeed(), new OtherPlace(), new Cords(),
        new OtherSupply(), new OtherSwitchModel(), new OtherInjectorModel(), new NearerInjector(), new OwnInjector(), new OtherDeviceModel(), new MidspanBeside(), new OtherStandbyModel(), new NewBatteries(), new OtherFan(),
        new BlankPanels(), new Vent(), new DoorSeal(), new BetterDoor(), new LinedCupboard(), new MetalBarrier(), new OtherCable(), new CoolerWay(), new WiderPathway(), new FewerConnectors(),
        new LargerCabinet(), new FasterModule(), new LargerLine(),
    ];
}
