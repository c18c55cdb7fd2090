using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Sums.Acoustics;

/// <summary>The inputs that the sums about a source share.</summary>
internal static class SourceInputs
{
    /// <summary>What the source gives.</summary>
    public static QuantityInput Source { get; } = new("power", "sound power level of the source, as declared", SoundPower.Units, new(15, 120, "dB(A)"));

    /// <summary>How far away it is.</summary>
    public static QuantityInput Distance { get; } = new("distance", "from the source to the ear", Metres.Units, new(0.1, 100, "m"));

    /// <summary>What stands round it.</summary>
    public static WordInput On { get; } = new("on", "what it stands at: nothing, one plane, two planes, three", "free", "plane", "edge", "corner")
    {
        Default = "plane",
        DefaultWhy = "a desk, floor or wall on one side of it",
    };

    /// <summary>Levels of the octaves.</summary>
    public static QuantityInput Bands { get; } = new("bands", "octave levels from 63 Hz to 8 kHz, unweighted", BandLevel.Units, new(-20, 140, "dB"))
    {
        IsList = true,
        Count = (8, 8),
        Parts = ["63 Hz", "125 Hz", "250 Hz", "500 Hz", "1 kHz", "2 kHz", "4 kHz", "8 kHz"],
        ListExample = "36, 39, 42, 44, 45, 43, 40, 34 dB",
    };

    /// <summary>How much louder it is for standing there [1]: 1, 2, 4 or 8.</summary>
    public static double Directivity(SumGiven given) => Math.Pow(2, On.Choices.ToList().IndexOf(given.Word(On)));
}
