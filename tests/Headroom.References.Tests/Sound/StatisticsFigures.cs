using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class StatisticsFigures
{
    private static readonly double[] Measured1 = [3.2, 5.1, 1.0, 4.4, 6.0];
    private static readonly double[] Uncertainty1 = [1.6, 2.5, 1.6, 2.0, 2.5];
    private static readonly double[] Measured2 = [-2.0, 5.5, 1.0, 8.0, 3.0];

    internal static Figure Work(Printed printed) => printed.Id[..2] switch
    {
        "PW" => Pair(printed.What),
        "TL" => Learned(printed),
        _ => printed.Id == "QR-4" ? Precision.Apart(new(0, 0.6), new(2, 0.8)) / 2 : Precision.Judge(Told.Numbers(printed.What)[0]).ToString(),
    };

    // "50.10 ± 6 and 54.50 ± 2.5"
    private static Figure Pair(string what)
    {
        var n = Told.Numbers(what);
        var (first, second) = (new Estimate(n[0], n[1]), new Estimate(n[2], n[3]));
        return Told.Split(what).Asked switch
        {
            "combined" => Precision.Combine(first, second).Value,
            "uncertainty" => Precision.Combine(first, second).Uncertainty,
            "apart" => Precision.Apart(first, second),
            "E_n" => Precision.Apart(first, second) / 2,
            _ => Precision.Judge(Precision.Apart(first, second)).ToString(),
        };
    }

    private static Figure Learned(Printed printed)
    {
        var jobs = Jobs(printed.Id is "TL-2" or "TL-3");
        var learned = OffsetLearning.Of(jobs);
        var number = Told.Numbers(printed.What);
        return printed.Id switch
        {
            "TL-3" => OffsetLearning.Shrunk(jobs[(int)number[0] - 1], learned),
            "TL-4" or "TL-5" or "TL-6" => After((int)number[0], printed.What.EndsWith("uncertainty", StringComparison.Ordinal)),
            _ => printed.What switch
            {
                "mu_f" => learned.FixedMean,
                "Qs" => learned.Spread,
                "C" => learned.C,
                "tau" => learned.Tau,
                "mu" => learned.Mean,
                "se" => learned.Error,
                _ => learned.OfNewJob,
            },
        };
    }

    private static double After(int jobs, bool uncertainty)
    {
        var believed = Jobs(false).Take(jobs).Aggregate(new Estimate(0, 5), Precision.Combine);
        return uncertainty ? believed.Uncertainty : believed.Value;
    }

    private static Estimate[] Jobs(bool second) => second
        ? [.. Measured2.Select(y => new Estimate(y, 1.6))]
        : [.. Measured1.Zip(Uncertainty1, (y, u) => new Estimate(y, u))];
}
