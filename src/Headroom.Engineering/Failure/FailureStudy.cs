using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Failure;

/// <summary>Works out what fails with what.</summary>
public static class FailureStudy
{
    /// <summary>Works out a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <param name="runningWatts">What a switch or midspan gives its ports at the most while all runs, by its id [W]; null when not known.</param>
    /// <returns>The result; entries are made from it by <see cref="FailureLedger"/>.</returns>
    public static FailureResult Of(BoundDesign bound, Func<string, double?> runningWatts) => new(bound, runningWatts);
}
