using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acoustics;

/// <summary>The equipment alone out of a reading with the room in it.</summary>
/// <param name="Alone">The level of the equipment [dB(A)]; null when nothing can be said.</param>
/// <param name="Branch">How it was taken out; null when no background is known.</param>
/// <param name="Bound">True when it is only an upper bound.</param>
/// <param name="Finding">What was done, in words.</param>
internal sealed record TakenOut(Estimate? Alone, BackgroundBranch? Branch, bool Bound, string Finding)
{
    /// <summary>Takes the room out of a reading.</summary>
    public static TakenOut Of(Reading reading, double? background)
    {
        var common = reading.PlusMinus / 2 ?? SoundMeter.Common(reading.Instrument, reading.Calibrated);
        if (background is not { } room)
            return new(new(reading.Value, common), null, true, "no background is known, so the equipment alone is at most what was read");
        var (level, branch) = BackgroundCorrection.SourceAlone(reading.Value, room);
        var over = $"{Words.Of(Math.Round(reading.Value - room, 1))} dB above the background of {Words.Of(room)}";
        return branch switch
        {
            BackgroundBranch.Contradicts => new(null, branch, false, $"{Words.Of(reading.Value)} dB(A) with the equipment is below the background of {Words.Of(room)}: the two contradict each other, take both again"),
            BackgroundBranch.AtMost => new(new(level!.Value, common), branch, true, $"{over}: too little to take the room out, the equipment alone is at most {Words.Of(Math.Round(level.Value, 1))} dB(A)"),
            BackgroundBranch.Corrected => new(new(level!.Value, Uncertainty(reading.Value - room, common)), branch, reading.UpperBound, $"{over}: the equipment alone is {Words.Of(Math.Round(level.Value, 1))} dB(A)"),
            _ => new(new(level!.Value, Precision.RootSum(SoundMeter.Repeat, common)), branch, reading.UpperBound, $"{over}: the room is not in it"),
        };
    }

    /// <summary>What it means that a prediction and a reading lie so far apart.</summary>
    public static string Verdict(Estimate predicted, Estimate read, bool bound)
    {
        if (bound)
            return read.Value >= predicted.Value ? "an upper bound: it contradicts nothing" : "lower than predicted: the bound counts";
        var apart = Precision.Apart(predicted, read);
        return Precision.Judge(apart) switch
        {
            Agreement.Agree => $"agrees; weighed together {Words.Of(Math.Round(Precision.Combine(predicted, read).Value, 1))} dB(A)",
            Agreement.Doubtful => "doubtful: both are kept, the higher one counts; take a second reading",
            _ => apart > 0
                ? "contradicts the catalogue: not put together; look for another fan level, another spot than written, speech in the reading, or a worn bearing"
                : "contradicts the catalogue: not put together; look for a lower fan level, another spot than written, or another model than written",
        };
    }

    private static double Uncertainty(double difference, double common) =>
        Precision.RootSum(BackgroundCorrection.Uncertainty(difference, SoundMeter.Repeat, SoundMeter.Repeat), common);
}
