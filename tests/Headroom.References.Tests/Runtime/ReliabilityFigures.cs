using Headroom.Engineering.Failure;
using Headroom.Engineering.Reliability;
using Headroom.References.Tests.Sound;

namespace Headroom.References.Tests.Runtime;

internal static class ReliabilityFigures
{
    private const double Fleet = 2_102_400;

    internal static Figure Work(Printed printed)
    {
        var (id, what, numbers) = (printed.Id, printed.What, Told.Numbers(printed.What));
        return id.Split('/')[0] switch
        {
            "2.1" => Rates(printed, id[4..], what, numbers),
            "2.2" => Compared(printed, id[4..], what),
            "2.3" => Spares(printed, id[4..], what, numbers),
            "2.4" => Available(printed, id[4..], what, numbers),
            "2.5" => EarlyLifeOf(id.EndsWith("0.5", StringComparison.Ordinal) ? (0.5, 1e6) : (0.7, 2e6), what, numbers),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static Figure Rates(Printed printed, string id, string what, double[] numbers)
    {
        if (id.StartsWith("factors-", StringComparison.Ordinal))
        {
            var failures = int.Parse(id[8..], System.Globalization.CultureInfo.InvariantCulture);
            var range = FieldRate.Classical(Math.Max(1, failures), failures, numbers[0] / 100);
            return what.StartsWith("low", StringComparison.Ordinal) ? range.LeastHours : range.MostHours;
        }

        var belief = new RateBelief(2, 1400).After(2, 1909);
        var mixed = FieldRate.FromCatalogue(300_000, 1).After(3, Fleet);
        return (id, what) switch
        {
            ("800-hours", "MTBF") => FieldRate.Classical(800, 2, 0.9).Hours,
            ("800-hours", "low at 90 %") => FieldRate.Classical(800, 2, 0.9).LeastHours,
            ("800-hours", _) => FieldRate.Classical(800, 2, 0.9).MostHours,
            ("no-failure", _) => FieldRate.Classical(100_000, 0, 2 * numbers[0] / 100 - 1).LeastHours,
            ("rule-of-three", _) => 1 - Math.Exp(-1 / FieldRate.Classical(numbers[0], 0, 0.9).LeastHours),
            ("three-failures", "MTBF as a rate") => 100 * EarlyLife.YearHours / FieldRate.Classical(Fleet, 3, 0.9).Hours!.Value,
            ("three-failures", "low rate at 90 %") => 100 * EarlyLife.YearHours / FieldRate.Classical(Fleet, 3, 0.9).MostHours!.Value,
            ("three-failures", _) => 100 * EarlyLife.YearHours / FieldRate.Classical(Fleet, 3, 0.9).LeastHours,
            ("belief", "a'") => belief.Failures,
            ("belief", "b'") => belief.Hours,
            ("belief", "1 / mean rate") => 1 / belief.MeanRate,
            ("belief", "probability above 600 h") => FieldRate.ProbabilityAbove(belief, 600),
            ("belief", _) => FieldRate.HoursExceeded(belief, numbers[0] / 100),
            ("test-time", _) => FieldRate.HoursToShow(new RateBelief(2, 1400), 600, 0.8, 2),
            ("two-times", "a") => FieldRate.FromTwo(600, 250).Failures,
            ("two-times", _) => FieldRate.FromTwo(600, 250).Hours,
            ("weak-prior", _) => 600 / FieldRate.HoursExceeded(new RateBelief(1, 1), 0.5),
            ("catalogue-prior", "mean") => 100 * EarlyLife.YearHours * mixed.MeanRate,
            ("catalogue-prior", "low at 90 %") => 100 * EarlyLife.YearHours * FieldRate.RateQuantile(mixed, 0.05),
            ("catalogue-prior", _) => 100 * EarlyLife.YearHours * FieldRate.RateQuantile(mixed, 0.95),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static Figure Compared(Printed printed, string id, string what)
    {
        var (one, other) = id switch
        {
            "11-of-800" => (new FieldRecord(11, 800), new FieldRecord(21, 3011)),
            "7-and-2" => (new FieldRecord(7, 400_000), new FieldRecord(2, 500_000)),
            _ => (new FieldRecord(1, 1e5), new FieldRecord(0, 1e5)),
        };
        var ratio = RateComparison.Ratio(one, other, 0.95);
        return what switch
        {
            "two-sided" => RateComparison.TwoSided(one, other),
            "one-sided" => RateComparison.OneSided(one, other),
            "ratio" => ratio.Ratio,
            "ratio, low" => ratio.Least,
            "ratio, high" => ratio.Most,
            "fails more" => RateComparison.FailsMore(one, other),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static Figure Spares(Printed printed, string id, string what, double[] numbers)
    {
        var few = new RateBelief(4, 2_402_400);
        var twenty = SpareParts.Expected(20, 2160, 10_000);
        return (id, what) switch
        {
            ("twenty-units", "failures to be expected") => twenty,
            ("twenty-units", "spares at 95 %") => SpareParts.Needed(twenty, 0.95),
            ("twenty-units", _) => SpareParts.Enough(twenty, (int)numbers[0]),
            ("45-drives", _) when what.StartsWith("to be", StringComparison.Ordinal) => SpareParts.Expected(45, 2160, 1000 * numbers[0]),
            ("45-drives", _) => SpareParts.Needed(SpareParts.Expected(45, 2160, 1000 * numbers[1]), 0.95),
            ("table", _) => SpareParts.Needed(numbers[0], numbers[1] / 100),
            ("0.972", _) => SpareParts.Enough(0.972, (int)numbers[0]),
            ("40-switches", _) => SpareParts.Enough(SpareParts.Expected(40, 14 * 24, 200_000), (int)numbers[0]),
            ("predictive", "spares at 95 %") => SpareParts.Needed(few, 1_051_200, 0.95),
            ("predictive", _) => SpareParts.Enough(few, 1_051_200, (int)numbers[0]),
            ("plug-in", "spares at 95 %") => SpareParts.Needed(1.75025, 0.95),
            ("plug-in", _) => SpareParts.Enough(1.75025, (int)numbers[0]),
            ("none-seen", _) => SpareParts.Enough(FieldRate.FromNothing(0, 1e5), 1.5e5, (int)numbers[0]),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static Figure Available(Printed printed, string id, string what, double[] numbers)
    {
        var (one, sw, supply) = (Availability.Of(100_000, 4), Availability.Of(200_000, 24), Availability.Of(100_000, 24));
        var (chain, two) = (Availability.InARow([sw, supply]), Availability.InARow([sw, Availability.SideBySide(supply, 0)]));
        var both = (Rate: Availability.RateOfBoth(0.05 / 8760, 0.02 / 8760, 20, 25) * 8760, Hours: Availability.HoursOfBoth(20, 25));
        return (id, what) switch
        {
            ("100-kh", "one") => one,
            ("100-kh", _) => Availability.SideBySide(one, 0),
            ("two-of-99", "in a row") => Availability.InARow([0.99, 0.99]),
            ("two-of-99", _) => Availability.SideBySide(0.99, 0),
            ("both-down", "rate") => both.Rate,
            ("both-down", "time") => both.Hours,
            ("both-down", _) => both.Rate * both.Hours,
            ("50-kh", "works") => Availability.Of(50_000, 24),
            ("50-kh", _) => Availability.HoursLost(Availability.Of(50_000, 24)),
            ("switch-and-supply", "works") => chain,
            ("switch-and-supply", _) => Availability.HoursLost(chain),
            ("switch-and-two-supplies", "works") => two,
            ("switch-and-two-supplies", _) => Availability.HoursLost(two),
            ("common-cause", "both lost at 5 %") => 1 - Availability.SideBySide(supply, 0.05),
            ("common-cause", _) => 1 - Availability.SideBySide(supply, 0),
            ("nines", _) => 60 * Availability.HoursLost(1 - Math.Pow(10, -numbers[0])),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static Figure EarlyLifeOf((double Shape, double Scale) life, string what, double[] numbers) =>
        what.StartsWith("caught", StringComparison.Ordinal) ? EarlyLife.FailedWithin(life.Shape, life.Scale, numbers[0]) : EarlyLife.FirstYearAfter(life.Shape, life.Scale, numbers[0]);
}
