using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Power;
using static Headroom.Engineering.Sums.Power.RunInputs;

namespace Headroom.Engineering.Sums.Power;

/// <summary>How long a run may be for its device to get the volts it needs.</summary>
internal static class LongestRun
{
    // ISO/IEC 11801 and TIA-568: a channel of at most 100 m, whatever the volts.
    private const double ChannelMetres = 100;

    private static readonly QuantityInput Least = new("least-volts", "volts the device needs", Volts.Units, new(1, 120, "V"));

    private static readonly SumOutput Longest = new("longest-run", "m", "longest run that keeps the volts");
    private static readonly SumOutput Ohms = new("most-ohms", "Ω", "resistance out and back that keeps them");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "longest-run",
        Discipline = PowerSums.Discipline,
        Answers = "how long may a run be before its device lacks volts?",
        Inputs = [Feed, Least, Draw, Cable, Temperature, Pairs, Conductivity],
        Outputs = [Longest, Ohms],
        Formula = "R = (V − V_least) V_least / P, V_least at least V / 2; L = R · pairs / 2 / r",
        Source = $"constant-power load behind a resistance (circuit theory); {RunInputs.Source}",
        Example = "volts 54 V least-volts 42 V draw 25 W cable 23 AWG",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (volts, least, watts) = (given[Feed], given[Least], given[Draw]);
        IReadOnlyList<Caution> cautions = [.. Cautions(given), .. CautionsOf(volts)];
        if (ConstantPowerLoad.MostOhmsKeeping(volts, least, watts) is not { } ohms)
        {
            return new SumAnswer(
                $"No run is short enough: the device needs {new Told(least, "V")} and the run is fed with {new Told(volts, "V")}.",
                [Longest.Is(null), Ohms.Is(null)],
                []) { Holds = false, Cautions = cautions };
        }

        var perMetre = OhmsPerMetre(given);
        var metres = ohms * given[Pairs] / 2 / perMetre;
        var kept = Math.Max(least, volts / 2);
        return new SumAnswer(
            $"The run may be {new Told(metres, "m")} long, cords included; then just {new Told(kept, "V")} reach the device.",
            [Longest.Is(metres), Ohms.Is(ohms)],
            [
                new("R, out and back", $"({Words.Of(volts)} − {Words.Of(kept)}) · {Words.Of(kept)} / {Words.Of(watts)} W", ohms, "Ω"),
                new("one conductor", PerMetre(given), 1000 * perMetre, "mΩ/m"),
                new("L", $"{Words.Of(ohms)} Ω · {Words.Of(given[Pairs])} pairs / 2 / {Words.Of(1000 * perMetre)} mΩ/m", metres, "m"),
            ])
        {
            Notes = [.. Notes(metres)],
            Cautions = cautions,
        };
    }

    private static IEnumerable<FormattableString> Notes(double metres)
    {
        yield return $"Twisting makes a conductor 1 to 3 % longer than its cable (common practice, no source): keep that much in hand.";
        if (metres > ChannelMetres)
            yield return $"For data the cabling standards allow {new Told(ChannelMetres, "m")} from port to device, cords included, whatever the volts.";
    }
}
