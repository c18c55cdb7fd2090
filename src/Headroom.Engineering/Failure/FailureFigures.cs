using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Failure;

/// <summary>What is lost with each unit, where the house sets no limit; and what a year costs.</summary>
internal static class FailureFigures
{
    /// <summary>The figures of a result.</summary>
    public static IEnumerable<Figure> Of(FailureResult result)
    {
        if (result.Bound.Job.Policy.Failures?.MostDark is not null || result.Bound.Endpoints.Count == 0)
            yield break;
        foreach (var effect in result.Effects)
        {
            if (effect.Lost > 1)
                yield return new Figure($"{FailureLedger.Discipline}/{effect.Subject}/lost-with-it", effect.Subject, "endpoints lost when it fails", effect.Lost, "", null, () => DarkStory.Of(effect, []));
        }
    }
}
