using Headroom.Engineering.Cabling;
using static Headroom.Engineering.Sums.Cabling.FibreInputs;

namespace Headroom.Engineering.Sums.Cabling;

/// <summary>How much light a fibre link may lose by itself.</summary>
internal static class FibreLink
{
    private static readonly WordInput Light = new("light", "wavelength in nm", "850", "1300", "1310", "1550");

    private static readonly SumOutput Loss = new("loss", "dB", "what the link may lose when all is sound");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "fibre-loss",
        Discipline = CablingSums.Discipline,
        Answers = "how much may a fibre link lose when it is sound?",
        Inputs = [Length, Fibre, Light, Connections, Splices],
        Outputs = [Loss],
        Formula = "loss = length · dB/km + connections · 0.75 dB + splices · 0.3 dB",
        Source = "TIA-568.3-D and ISO/IEC 11801-1 (OS2), from memory",
        Example = "length 150 m fibre OM3 light 850",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var nanometres = double.Parse(given.Word(Light), System.Globalization.CultureInfo.InvariantCulture);
        if (FibreLoss.DecibelsPerKilometre(given.Word(Fibre), nanometres) is not { } perKilometre)
        {
            return new SumAnswer(
                $"The standards give no loss of {given.Word(Fibre)} at {given.Word(Light)} nm: it is not made for that light.",
                [Loss.Is(null)],
                []) { Holds = false };
        }

        var (connections, splices) = ((int)given[Connections], (int)given[Splices]);
        var loss = FibreLoss.Decibels(given[Length], perKilometre, connections, splices);
        return new SumAnswer(
            $"A sound link loses {new Told(loss, "dB")} at most; a meter that shows more has found a fault.",
            [Loss.Is(loss)],
            [
                new("fibre", $"{Words.Of(given[Length])} m · {Words.Of(perKilometre)} dB/km", given[Length] / 1000 * perKilometre, "dB"),
                new("connections", $"{connections} · {Words.Of(FibreLoss.PairDecibels)} dB", connections * FibreLoss.PairDecibels, "dB"),
                new("splices", $"{splices} · {Words.Of(FibreLoss.SpliceDecibels)} dB", splices * FibreLoss.SpliceDecibels, "dB"),
                new("loss", "all together", loss, "dB"),
            ])
        {
            Cautions = [CautionTable.Laser],
        };
    }
}
