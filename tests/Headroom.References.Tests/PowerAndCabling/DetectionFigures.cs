using Headroom.Engineering.Power;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class DetectionFigures
{
    internal static Figure Work(Printed printed) => printed.Id switch
    {
        "DC-6" or "DC-7" => Currents(printed),
        "DC-5" or "DC-8" or "DC-9" => Events(printed),
        _ => Signature(printed),
    };

    private static Figure Signature(Printed printed) => printed.What switch
    {
        "signature resistance of a device, least" => Detection.DeviceOhmsMin / 1000,
        "signature resistance of a device, most" => Detection.DeviceOhmsMax / 1000,
        "a device may show 23.6, 23.7, 26.3, 26.4 kΩ" => Figure.List(new[] { 23.6, 23.7, 26.3, 26.4 }.Select(kilo => Detection.IsValidSignature(kilo * 1000))),
        "resistance a source accepts, least" => Detection.AcceptOhmsMin / 1000,
        "resistance a source accepts, most" => Detection.AcceptOhmsMax / 1000,
        "rejects below" => Detection.RejectBelowOhms / 1000,
        "rejects above" when printed.Id == "DC-2" => Detection.RejectAboveOhms / 1000,
        "answer to 14.9, 15, 18.9, 19, 26.5, 26.6, 33, 33.1 kΩ" =>
            Figure.List(new[] { 14.9, 15, 18.9, 19, 26.5, 26.6, 33, 33.1 }.Select(kilo => Detection.AnswerToOhms(kilo * 1000))),
        "signature capacitance of a device, least" => Detection.DeviceFaradsMin * 1e6,
        "signature capacitance of a device, most" => Detection.DeviceFaradsMax * 1e6,
        "rejects above" => Detection.RejectAboveFarads * 1e6,
        "answer to 0.12, 0.13, 10, 10.1 µF" => Figure.List(new[] { 0.12e-6, 0.13e-6, 10e-6, 10.1e-6 }.Select(Detection.AnswerToFarads)),
        "detection voltage at a valid signature, least" => Detection.VoltsMin,
        "detection voltage at a valid signature, most" => Detection.VoltsMax,
        "detection voltage, open" => Detection.OpenVoltsMax,
        "detection current, short" => Detection.ShortAmperesMax * 1000,
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Currents(Printed printed) => printed.What switch
    {
        "device current, class 0, types 3 and 4, least" => Classification.Class0AmperesMinType3Or4 * 1000,
        "classes read at 3, 10.5, 18.5, 28, 40 mA" => Read(3, 10.5, 18.5, 28, 40),
        "classes read in the gaps, at 6, 15, 23, 33 mA" => Read(6, 15, 23, 33),
        var what => Limit(Classification.Currents[what[what.IndexOf("class ", StringComparison.Ordinal) + 6] - '0'], printed),
    };

    private static Figure Limit(ClassCurrent row, Printed printed) => 1000 * (printed.Id, printed.What[^5..]) switch
    {
        ("DC-6", "least") => row.DeviceAmperesMin,
        ("DC-6", _) => row.DeviceAmperesMax,
        (_, "least") => row.SourceAmperesMin,
        _ => row.SourceAmperesMax,
    };

    private static Figure Read(params double[] milliamperes) =>
        Figure.List(milliamperes.Select(milli => string.Join(' ', Classification.MayRead(milli / 1000))), "; ");

    private static Figure Events(Printed printed) => printed.What switch
    {
        "classification voltage, least" => Classification.VoltsMin,
        "classification voltage, most" => Classification.VoltsMax,
        "classification current limit, least" => Classification.LimitAmperesMin * 1000,
        "classification current limit, most" => Classification.LimitAmperesMax * 1000,
        "mark voltage, least" => Classification.MarkVoltsMin,
        "mark voltage, most" => Classification.MarkVoltsMax,
        "mark time, least" => Classification.MarkSecondsMin * 1000,
        "mark time, most" => Classification.MarkSecondsMax * 1000,
        "first event of two, least" => Classification.FirstEventSecondsMin * 1000,
        "first event of two, most" => Classification.FirstEventSecondsMax * 1000,
        "long first event, least" => Classification.LongEventSecondsMin * 1000,
        "long first event, most" => Classification.LongEventSecondsMax * 1000,
        "later events, least" => Classification.LaterEventSecondsMin * 1000,
        "later events, most" => Classification.LaterEventSecondsMax * 1000,
        _ => PrintedTables.Nothing(printed),
    };
}
