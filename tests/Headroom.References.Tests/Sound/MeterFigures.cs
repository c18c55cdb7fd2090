using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class MeterFigures
{
    internal static Figure Work(Printed printed) => printed.Id[..2] switch
    {
        "PR" => Passed(printed.What),
        "PM" => Drawn(printed),
        "RR" => Repeats(printed.What),
        _ => Meter(printed),
    };

    private static Figure Meter(Printed printed) => printed.What switch
    {
        "class 1 meter" or "class 2 meter" or "phone app" => SoundMeter.Common(printed.What, null),
        "repeat" => SoundMeter.OfRepeats([40]),
        "combined" => Combined(),
        "expanded, k = 2" => 2 * Combined(),
        _ => Precision.Rectangular(Told.Numbers(printed.What)[0]),
    };

    // Weighting, linearity, calibrator, position, display.
    private static double Combined() => Precision.RootSum(
        Precision.Rectangular(1.0), Precision.Rectangular(1.1), Precision.Rectangular(0.4), 0.5, Precision.Rectangular(0.05));

    private static Figure Passed(string what)
    {
        var numbers = Told.Numbers(what);
        return what[0] switch
        {
            'a' => BackgroundCorrection.Sensitivity(numbers[0]).A,
            'b' => BackgroundCorrection.Sensitivity(numbers[0]).B,
            _ => BackgroundCorrection.Uncertainty(numbers[1], numbers[0], numbers[0]),
        };
    }

    private static Figure Drawn(Printed printed)
    {
        var (given, asked) = Told.Split(printed.What);
        var n = Told.Numbers(given);
        return asked switch
        {
            "linear" => BackgroundCorrection.Uncertainty(n[0] - n[1], n[2], n[2]),
            "upper bound" => BackgroundCorrection.UpperBound95(new(n[0], n[2]), new(n[1], n[2])),
            _ => Subtractions.Of(n[0], n[1], n[2]).Answer(asked),
        };
    }

    private static Figure Repeats(string what)
    {
        var (given, asked) = Told.Split(what);
        var levels = Told.Numbers(given);
        return asked switch
        {
            "energy mean" => Levels.Mean(levels),
            "deviation" => SoundMeter.Deviation(levels),
            "of the mean" => SoundMeter.OfRepeats(levels),
            "half width 95 %" => SoundMeter.HalfWidth95(levels),
            _ => SoundMeter.TooFarApart(levels),
        };
    }
}
