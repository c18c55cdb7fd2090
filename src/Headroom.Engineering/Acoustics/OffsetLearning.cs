namespace Headroom.Engineering.Acoustics;

/// <summary>How far a model's sound lies from its catalogue, learned from several jobs: a normal within a normal.</summary>
public static class OffsetLearning
{
    /// <summary>With fewer jobs than this the spread between them is not believed below <see cref="LeastSpread"/>: rule of this program.</summary>
    public const int JobsToTrust = 5;

    /// <summary>The least spread between jobs while there are few [dB]: rule of this program.</summary>
    public const double LeastSpread = 2;

    /// <summary>What several jobs say of one model.</summary>
    /// <param name="jobs">For each job measured - predicted, with its standard uncertainty; two or more.</param>
    /// <returns>Every intermediate figure.</returns>
    /// <remarks>Source: DerSimonian and Laird 1986, moment estimate of the spread between studies.</remarks>
    public static LearnedOffset Of(IReadOnlyList<Estimate> jobs)
    {
        Require.Between(2, int.MaxValue, jobs.Count);
        var (sum, squares, weighted) = (0.0, 0.0, 0.0);
        foreach (var job in jobs)
        {
            var w = 1 / (job.Uncertainty * job.Uncertainty);
            (sum, squares, weighted) = (sum + w, squares + w * w, weighted + w * job.Value);
        }

        var fixedMean = weighted / sum;
        var spread = jobs.Sum(job => Square((job.Value - fixedMean) / job.Uncertainty));
        var c = sum - squares / sum;
        var tau2 = Math.Max(0, (spread - (jobs.Count - 1)) / c);
        var (mean, error) = Weighed(jobs, tau2);
        var between = jobs.Count < JobsToTrust ? Math.Max(Math.Sqrt(tau2), LeastSpread) : Math.Sqrt(tau2);
        return new(fixedMean, spread, c, Math.Sqrt(tau2), mean, error, Precision.RootSum(error, between));
    }

    /// <summary>What is believed of one of the jobs: its own figure drawn towards the mean of all.</summary>
    /// <param name="job">Its own figure [dB].</param>
    /// <param name="learned">What all jobs say.</param>
    /// <returns>The figure [dB].</returns>
    /// <remarks>Source: shrinkage B = u² / (u² + τ²), empirical Bayes.</remarks>
    public static double Shrunk(Estimate job, LearnedOffset learned)
    {
        var b = Square(job.Uncertainty) / (Square(job.Uncertainty) + Square(learned.Tau));
        return b * learned.Mean + (1 - b) * job.Value;
    }

    private static (double Mean, double Error) Weighed(IReadOnlyList<Estimate> jobs, double tau2)
    {
        var (sum, weighted) = (0.0, 0.0);
        foreach (var job in jobs)
        {
            var w = 1 / (Square(job.Uncertainty) + tau2);
            (sum, weighted) = (sum + w, weighted + w * job.Value);
        }

        return (weighted / sum, 1 / Math.Sqrt(sum));
    }

    private static double Square(double value) => value * value;
}
