using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class KeepAliveFigures
{
    private static readonly KeepAlivePulse Older = KeepAlive.Pulse(PoeType.Type2, PoeType.Type2, 4);
    private static readonly KeepAlivePulse LowClass = KeepAlive.Pulse(PoeType.Type3, PoeType.Type3, 4);
    private static readonly KeepAlivePulse HighClass = KeepAlive.Pulse(PoeType.Type4, PoeType.Type4, 5);

    internal static Figure Work(Printed printed) => printed.Id switch
    {
        "MP-1" => Rule(Older, printed),
        "MP-2" => Watch(KeepAlive.Times(PoeType.Type1), printed),
        "MP-3" => Watch(KeepAlive.Times(PoeType.Type4), printed),
        "MP-4" => Rule(LowClass, printed),
        _ => Worked(printed),
    };

    private static Figure Rule(KeepAlivePulse pulse, Printed printed) => printed.What switch
    {
        "current" or "current, classes 1 to 4" => pulse.Amperes * 1000,
        "current, classes 5 to 8" => HighClass.Amperes * 1000,
        "on, at least" => pulse.OnSeconds * 1000,
        "off, at most" => pulse.OffSeconds * 1000,
        "period" => (pulse.OnSeconds + pulse.OffSeconds) * 1000,
        "a type 1 or 2 source" or "a type 1 or 2 source, to which the pulse is too short" => Both(pulse, PoeType.Type1, PoeType.Type2),
        "a type 3 or 4 source" => Both(pulse, PoeType.Type3, PoeType.Type4),
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Watch(KeepAliveTimes times, Printed printed) => 1000 * printed.What switch
    {
        "load taken as a sign, shortest" => times.ValidSeconds,
        "power removed after, least" => times.DropSecondsMin,
        "power removed after, most" => times.DropSecondsMax,
        _ => PrintedTables.Nothing(printed).Number!.Value,
    };

    private static Figure Worked(Printed printed) => printed.What switch
    {
        "answer to 4.9, 5, 9.9, 10, 10.1 mA" =>
            Figure.List(new[] { 4.9e-3, 5e-3, 9.9e-3, 10e-3, 10.1e-3 }.Select(amperes => KeepAlive.Holds(amperes, PoeType.Type1, 3))),
        "mean power of MP-1 at 50 V" => KeepAlive.MeanWatts(50, Older) * 1000,
        "mean current of MP-1" => Older.MeanAmperes * 1000,
        "mean power of MP-4 at 50 V, classes 1 to 4" => KeepAlive.MeanWatts(50, LowClass) * 1000,
        "mean power of MP-4 at 50 V, classes 5 to 8" => KeepAlive.MeanWatts(50, HighClass) * 1000,
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Both(KeepAlivePulse pulse, PoeType one, PoeType other) =>
        new[] { one, other }.Select(pse => KeepAlive.Holds(pulse, pse, 4)).Distinct().Single().ToString();
}
