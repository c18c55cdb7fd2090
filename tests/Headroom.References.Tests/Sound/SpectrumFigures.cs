using System.Globalization;
using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class SpectrumFigures
{
    internal static Figure Weights(Printed printed)
    {
        // The printed frequency is nominal: its third octave is the nearest.
        var nominal = double.Parse(printed.Id[3..], CultureInfo.InvariantCulture);
        var hertz = Weighting.Exact((int)Math.Round(10 * Math.Log10(nominal / 1000)));
        return printed.What == "A" ? Weighting.A(hertz) : Weighting.C(hertz);
    }

    internal static Figure Work(Printed printed)
    {
        var (given, asked) = Told.Split(printed.What);
        var bands = Told.Numbers(given);
        return asked switch
        {
            "LZ" => Octaves.LevelZ(bands),
            "LA" => Octaves.LevelA(bands),
            "LC" => Octaves.LevelC(bands),
            "C-A" => Octaves.LevelC(bands) - Octaves.LevelA(bands),
            "NR" => NoiseRating.Of(bands).Rating,
            "NR band" => Octaves.Names[NoiseRating.Of(bands).Band],
            "NC" => NoiseCriterion.Of(bands).Rating,
            "NC band" => Octaves.Names[NoiseCriterion.Of(bands).Band],
            "SIL" => Octaves.SpeechInterference(bands),
            _ => PrintedTables.Nothing(printed),
        };
    }
}
