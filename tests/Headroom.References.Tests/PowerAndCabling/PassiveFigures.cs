using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class PassiveFigures
{
    private static readonly string[] Cases = ["LC-14", "LC-15", "LC-16", "LC-17", "LC-18", "LC-21", "LC-22"];

    internal static Figure Work(Printed printed) => printed.What switch
    {
        "pins + and −" => $"{string.Join(' ', Positive(PassivePins.Injector))} + / {string.Join(' ', PassivePins.Injector.Other)} −",
        "same pins as alternative B" => PassivePins.Injector.One.Concat(PassivePins.Injector.Other)
            .SequenceEqual(PassivePins.AlternativeB.One.Concat(PassivePins.AlternativeB.Other)),
        "alternative A" => $"{string.Join(' ', PassivePins.AlternativeA.One)} / {string.Join(' ', PassivePins.AlternativeA.Other)}"
            + (PassivePins.AlternativeA.OneIsPositive is null ? ", either polarity" : ""),
        "24 V 0.5 A" => ConstantPowerLoad.FromSource(24, 0, 24 * 0.5)?.LoadWatts,
        "24 V 1 A" => ConstantPowerLoad.FromSource(24, 0, 24 * 1)?.LoadWatts,
        "48 V 0.5 A" => ConstantPowerLoad.FromSource(48, 0, 48 * 0.5)?.LoadWatts,
        "turn-on, by" => PassivePins.TurnOnVolts,
        "turn-off, by" => PassivePins.TurnOffVolts,
        "a load of turn-on 36, 42 V starts on 24 V" => Figure.List(new[] { 36, PassivePins.TurnOnVolts }.Select(turnOn => PassivePins.StartsOn(24, turnOn))),
        "a load of turn-on 36, 42 V starts on 48 V" => Figure.List(new[] { 36, PassivePins.TurnOnVolts }.Select(turnOn => PassivePins.StartsOn(48, turnOn))),
        "cases LC-14 to LC-18, LC-21, LC-22 without an operating point" => Figure.List(Cases.Where(id => LoadCase.All[id].Solved is null)),
        "LC-16: share of the voltage that is left" => 100 * LoadCase.All["LC-16"].Solved?.LoadVolts / LoadCase.All["LC-16"].SourceVolts,
        "LC-16: loss, share of source power" => 100 * LoadCase.All["LC-16"].Solved?.LostWatts / LoadCase.All["LC-16"].Solved?.SourceWatts,
        _ => PrintedTables.Nothing(printed),
    };

    private static IReadOnlyList<int> Positive(PowerPins pins) => pins.OneIsPositive == true ? pins.One : [];
}
