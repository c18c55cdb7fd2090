using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acoustics;

/// <summary>Turns a reading close to a source into its sound power, and puts it together with what is declared.</summary>
internal sealed class UnitReadings(SoundRooms rooms)
{
    // One spot in front of a device for all of it [dB]: common practice.
    private const double SpotUncertainty = 2;

    // The fans may have run otherwise than thought [dB]: rule of this program.
    private const double StateUncertainty = 3;

    /// <summary>A reading and what it says of the source.</summary>
    public UnitReading Of(Reading reading, SoundSource source, (int Number, bool Known) level, SourcePower before)
    {
        if (reading.Distance is not { } metres)
            return new(reading, source, level.Number, null, false, before.Power, null, "a reading at a device without its distance says nothing of a seat: write the distance");
        var background = reading.Background ?? rooms.Space(source.Space)?.Background?.Value.Value;
        var taken = TakenOut.Of(reading, background);
        if (taken.Alone is not { } alone)
            return new(reading, source, level.Number, null, false, before.Power, null, taken.Finding);
        var (perPower, u) = PerPower(source, metres, before.Weights);
        var power = new Estimate(alone.Value - perPower, Precision.RootSum(alone.Uncertainty, u, level.Known ? 0 : StateUncertainty));
        return new(reading, source, level.Number, power, taken.Bound, before.Power, perPower, Finding((power, taken.Bound), before, taken.Finding, metres));
    }

    /// <summary>What is declared and what was read, together.</summary>
    public static SourcePower Together(SourcePower before, Estimate read, UnitReading taken)
    {
        if (before.Power is not { } declared)
            return taken.Bound ? before : before with { Power = read, Question = null, How = $"sound power {Words.Of(Math.Round(read.Value, 1))} dB(A) by reading at {Words.Of(taken.Reading.Distance ?? 0)} m" };
        if (taken.Bound)
            return read.Value < declared.Value ? before with { Power = declared with { Value = read.Value }, How = before.How + "; cut by a reading that is an upper bound" } : before;
        return Precision.Judge(Precision.Apart(declared, read)) switch
        {
            Agreement.Agree => before with { Power = Precision.Combine(declared, read), How = before.How + "; weighed together with a reading" },
            Agreement.Doubtful when read.Value > declared.Value => before with { Power = read, How = before.How + "; a reading is higher and counts until there is a second one" },
            _ => before,
        };
    }

    private (double PerPower, double Uncertainty) PerPower(SoundSource source, double metres, double[] weights)
    {
        if (metres <= SourcePowers.Near)
            return (-SourcePowers.PowerOf(0, metres, null).Power.Value, NearField.PriorUncertainty);
        var room = rooms.Space(source.Space) is { } space ? rooms.Of(space) : null;
        var share = PointSource.Share(2, metres);
        if (room is null or { Constant: null, Open: false })
            return (10 * Math.Log10(share), Precision.RootSum(SpotUncertainty, SpotUncertainty));
        var sum = share;
        for (var band = 0; band < Octaves.Count; band++)
            sum += weights[band] * room.Returned(band);
        return (10 * Math.Log10(sum), Precision.RootSum(SpotUncertainty, room.Uncertainty));
    }

    private static string Finding((Estimate Value, bool Bound) power, SourcePower before, string how, double metres)
    {
        var near = metres <= SourcePowers.Near ? "; at the outlet, carried outwards by an effective radius, not by the distance" : "";
        var said = $"{how}{near}; a sound power of {(power.Bound ? "at most " : "")}{Words.Of(Math.Round(power.Value.Value, 1))} dB(A) ± {Words.Of(Math.Round(2 * power.Value.Uncertainty, 1))}";
        if (before.Power is not { } declared)
            return $"{said}; the catalogue has none, so the reading counts";
        return $"{said}, the catalogue has {Words.Of(declared.Value)}: {TakenOut.Verdict(declared, power.Value, power.Bound)}";
    }
}
