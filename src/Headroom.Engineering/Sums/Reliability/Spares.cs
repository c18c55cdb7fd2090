using Headroom.Domain.Quantities;
using Headroom.Engineering.Reliability;

namespace Headroom.Engineering.Sums.Reliability;

/// <summary>How many spares a shelf wants.</summary>
internal static class Spares
{
    private static readonly NumberInput Units = new("units", "units in service", new(1, 100_000));
    private static readonly QuantityInput Mtbf = new("mtbf", "mean time between failures", Seconds.Units, new(1000, 1e8, "h"));
    private static readonly QuantityInput Lead = new("lead", "time until a new one comes", Seconds.Units, new(1, 1000, "d"));
    private static readonly QuantityInput Certainty = new("certainty", "probability with which the shelf is to last", Share.Units, new(50, 99.99, "%")) { Default = "95 %", DefaultWhy = "common practice, no source" };
    private static readonly NumberInput Seen = new("seen", "how many failures the time between failures was worked out from", new(1, 10_000)) { IsOptional = true };

    private static readonly SumOutput Needed = new("spares", "", "spares on the shelf");
    private static readonly SumOutput Enough = new("enough", "%", "so many are enough in");
    private static readonly SumOutput Expected = new("expected", "", "failures to be expected until then");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "spares",
        Discipline = ReliabilitySums.Discipline,
        Answers = "how many spares belong on the shelf?",
        Inputs = [Units, Mtbf, Lead, Certainty, Seen],
        Outputs = [Needed, Enough, Expected],
        Formula = "m = units · lead / mtbf; smallest s with P(X ≤ s) ≥ certainty; X Poisson, negative binomial where 'seen' is given",
        Source = "Blanchard, Logistics Engineering, from memory; predictive distribution NIST/SEMATECH e-Handbook 8.4.6",
        Example = "units 45 mtbf 100000 h lead 90 d",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (units, mtbf, lead) = ((int)given[Units], given[Mtbf] / 3600, given[Lead] / 3600);
        var expected = SpareParts.Expected(units, lead, mtbf);
        var belief = given.Maybe(Seen) is { } seen ? new RateBelief(seen, seen * mtbf) : null;
        var needed = belief is null ? SpareParts.Needed(expected, given[Certainty]) : SpareParts.Needed(belief, units * lead, given[Certainty]);
        var enough = 100 * (belief is null ? SpareParts.Enough(expected, needed) : SpareParts.Enough(belief, units * lead, needed));
        return new SumAnswer(
            $"{new Told(needed, needed == 1 ? "spare" : "spares")}: enough in {new Told(enough, "%")} of such times.",
            [Needed.Is(needed), Enough.Is(enough), Expected.Is(expected)],
            [
                new("to be expected", $"{units} · {Words.Of(lead)} h / {Words.Of(mtbf)} h", expected, ""),
                new("enough in", belief is null ? "Poisson" : "negative binomial", enough, "%"),
            ])
        {
            Notes = belief is null ? [$"The time between failures was taken as known; from few failures more are wanted: give 'seen'."] : [],
        };
    }
}
