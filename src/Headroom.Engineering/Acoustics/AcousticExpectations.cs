using Headroom.Domain.Jobs;
using Headroom.Engineering.Readings;

namespace Headroom.Engineering.Acoustics;

/// <summary>What the study of sound expects of readings at an ear or close to a source. What they say was worked out with the study; here it is told.</summary>
internal sealed class AcousticExpectations(AcousticResult result) : IExpectations
{
    /// <inheritdoc/>
    public Expectation? Of(Reading reading)
    {
        if (reading.What != "sound")
            return null;
        foreach (var sound in result.Listeners)
        {
            foreach (var read in sound.Readings)
            {
                if (ReferenceEquals(read.Reading, reading))
                    return AtEar(sound, read);
            }
        }

        foreach (var read in result.UnitReadings)
        {
            if (ReferenceEquals(read.Reading, reading))
                return AtSource(read);
        }

        return null;
    }

    private static Expectation AtEar(ListenerSound sound, EarReading read)
    {
        var taken = TakenOut.Of(read.Reading, read.Reading.Background ?? sound.Background?.Value);
        var finding = read switch
        {
            { Predicted: null } => $"{taken.Finding}; nothing was predicted to compare it with",
            { Alone: { } alone, Predicted: { } predicted } => $"{taken.Finding}, {SoundWords.Level(predicted.Value)} was predicted: {TakenOut.Verdict(predicted, alone, read.Bound)}",
            _ => taken.Finding,
        };
        return Told(sound, read.Total, 2 * read.Predicted?.Uncertainty ?? 0, read.Reading) with { Finding = finding };
    }

    private Expectation? AtSource(UnitReading read)
    {
        var sound = result.Listeners.FirstOrDefault(listener => listener.Paths.Any(path => path.Source.Id == read.Source.Id && path.Known))
            ?? result.Listeners.FirstOrDefault(listener => listener.Paths.Any(path => path.Source.Id == read.Source.Id));
        return sound is null ? null
            : Told(sound, read.Declared?.Value + read.PerPower, 2 * read.Declared?.Uncertainty ?? 0, read.Reading) with { Finding = read.Finding };
    }

    private static Expectation Told(ListenerSound sound, double? value, double plusMinus, Reading reading) => new(
        $"{AcousticLedger.Discipline}/{sound.Listener.Id}/level", value, plusMinus, OwnQuantity: false, IsLimit: false, "", "")
    {
        InstrumentPlusMinus = 2 * (reading.PlusMinus / 2 ?? SoundMeter.Common(reading.Instrument, reading.Calibrated)),
    };
}
