namespace Headroom.Engineering.Record;

/// <summary>The standard deviation of a few figures.</summary>
internal static class Spread
{
    /// <summary>Root of the sum of squares around the mean over n − 1; null below two figures.</summary>
    public static double? Of(IReadOnlyList<double> values)
    {
        if (values.Count < 2)
            return null;
        var mean = values.Average();
        return Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1));
    }
}
