namespace Headroom.Engineering.MeasuredDraws;

/// <summary>What units of several models draw together at a new site.</summary>
/// <param name="Groups">The units of which readings are known.</param>
/// <param name="Watts">What they draw together in all but one of a hundred sites [W].</param>
public sealed record DrawTotal(IReadOnlyList<DrawGroup> Groups, double Watts)
{
    /// <summary>The chance that a new site draws no more [1]: an engineering guess of what is safe enough.</summary>
    public const double Chance = 0.99;

    // Finer than a switch tells watts, and coarse enough that a switch of 48 ports is added up in a blink.
    private const double LeastStepWatts = 0.1;
    private const int MostSteps = 4000;

    /// <summary>Adds up groups.</summary>
    /// <param name="groups">The groups; one at least.</param>
    /// <returns>The total; one group is solved as it is, several on a grid.</returns>
    public static DrawTotal Of(IReadOnlyList<DrawGroup> groups) => groups[0].Fitted.Memory is { } memory ? memory.Total(groups, Sum) : Sum(groups);

    private static DrawTotal Sum(IReadOnlyList<DrawGroup> groups)
    {
        if (groups.Count == 1)
            return new(groups, Math.Min(groups[0].MostWatts, groups[0].Fitted.Draw.Together(groups[0].Units, Chance)));
        var step = Math.Max(LeastStepWatts, groups.Sum(group => group.MostWatts) / MostSteps);
        var sum = DrawGrid.Nothing(step);
        foreach (var group in groups)
            sum = sum.And(DrawGrid.Of(group.Fitted.Draw, group.Units, group.MostWatts, step));
        return new(groups, sum.Quantile(Chance));
    }

    /// <summary>The fewest sites that any of the models was read at.</summary>
    public int FewestSites => Groups.Min(group => group.Fitted.Sites.Count);

    /// <summary>True when of one model at least the belief beforehand decides.</summary>
    public bool IsPriorDriven => Groups.Any(group => group.Fitted.IsPriorDriven);
}
