using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class StartUpFigures
{
    internal static Figure Work(Printed printed) => printed.Id[..2] switch
    {
        "MP" => KeepAliveFigures.Work(printed),
        "AC" => Autoclassed(printed),
        "PW" => Worked(printed),
        _ => printed.Id switch { "PU-9" or "PU-10" or "PU-11" or "PU-12" or "PU-13" or "PU-14" => Faults(printed), _ => PowerUp(printed) },
    };

    private static Figure PowerUp(Printed printed) => 1000 * printed.What switch
    {
        "detection, most" => StartUp.DetectionSeconds,
        "power on after detection, most" => StartUp.PowerOnSeconds,
        "classification, one event, least" => StartUp.ClassificationSecondsMin,
        "classification, one event, most" => StartUp.ClassificationSecondsMax,
        "inrush allowed, classes 0 to 4, least" => Range(0, 4, cls => StartUp.InrushAmperes(cls).Least),
        "inrush allowed, classes 0 to 4, most" => Range(0, 4, cls => StartUp.InrushAmperes(cls).Most),
        "inrush allowed, classes 5 and 6, least" => Range(5, 6, cls => StartUp.InrushAmperes(cls).Least),
        "inrush allowed, classes 5 and 6, most" => Range(5, 6, cls => StartUp.InrushAmperes(cls).Most),
        "inrush allowed, classes 7 and 8, least" => Range(7, 8, cls => StartUp.InrushAmperes(cls).Least),
        "inrush allowed, classes 7 and 8, most" => Range(7, 8, cls => StartUp.InrushAmperes(cls).Most),
        "inrush time, least" => StartUp.InrushSecondsMin,
        "inrush time, most" => StartUp.InrushSecondsMax,
        "device ends inrush within" => StartUp.DeviceInrushSeconds,
        "capacitance without own limiting, most" => StartUp.DeviceFreeFarads * 1000,
        "type 2 device holds class 3 power, at least" => StartUp.Type2HoldSeconds,
        _ => PrintedTables.Nothing(printed).Number!.Value,
    };

    private static Figure Faults(Printed printed) => printed.What switch
    {
        "overload tolerated, least" => Overload.CutSecondsMin * 1000,
        "overload tolerated, most" => Overload.CutSecondsMax * 1000,
        "short circuit, type 1, least" => Overload.ShortCircuitSeconds(PoeType.Type1, 3).Least * 1000,
        "short circuit, type 1, most" => Overload.ShortCircuitSeconds(PoeType.Type1, 3).Most * 1000,
        "short circuit, type 2, least" => Overload.ShortCircuitSeconds(PoeType.Type2, 4).Least * 1000,
        "short circuit, type 2, most" => Overload.ShortCircuitSeconds(PoeType.Type2, 4).Most * 1000,
        "short circuit, classes 7 and 8, least" => Range(7, 8, cls => Overload.ShortCircuitSeconds(PoeType.Type4, cls).Least!.Value) * 1000,
        "short-circuit limit, type 1, least" => Overload.ShortCircuitAmperesMin(PoeType.Type1) * 1000,
        "short-circuit limit, type 2, least" => Overload.ShortCircuitAmperesMin(PoeType.Type2) * 1000,
        "wait after a fault, least" => Overload.FaultWaitSeconds * 1000,
        "back-off, least" => Overload.BackOffSeconds,
        "rise time, least" => StartUp.RiseSecondsMin * 1e6,
        "turn-off time, most" => Overload.TurnOffSecondsMax * 1000,
        "voltage of a port that is off, below" => Overload.OffVolts,
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Autoclassed(Printed printed) => printed.What switch
    {
        "device draws its maximum from, to, least" => Autoclass.DrawFromSeconds,
        "device draws its maximum from, to, most" => Autoclass.DrawToSeconds,
        "source measures from, least" => Autoclass.MeasureFromSecondsMin,
        "source measures from, most" => Autoclass.MeasureFromSecondsMax,
        "source measures to, least" => Autoclass.MeasureToSecondsMin,
        "source measures to, most" => Autoclass.MeasureToSecondsMax,
        "the measurement lies within the draw" =>
            Autoclass.DrawFromSeconds < Autoclass.MeasureFromSecondsMin && Autoclass.MeasureToSecondsMax < Autoclass.DrawToSeconds,
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Worked(Printed printed) => printed.What switch
    {
        "worst plug-in to power good" => StartUp.WorstPlugInSeconds * 1000,
        "charge 180 µF to 57 V at 0.400 A" => StartUp.ChargeSeconds(farads: 180e-6, volts: 57, amperes: 0.400) * 1000,
        "charge 5 µF to 57 V at 0.400 A" => StartUp.ChargeSeconds(farads: 5e-6, volts: 57, amperes: 0.400) * 1000,
        "most capacitance to 57 V in 50 ms at 0.400 A" => StartUp.MostFarads(seconds: 0.050, volts: 57, amperes: 0.400) * 1e6,
        _ => KeepAliveFigures.Work(printed),
    };

    // One figure for several classes: all of them must give it.
    private static double Range(int first, int last, Func<int, double> figure) =>
        Enumerable.Range(first, last - first + 1).Select(figure).Distinct().Single();
}
