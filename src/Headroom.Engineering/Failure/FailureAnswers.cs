using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Failure;

/// <summary>Answers the questions people ask about failures.</summary>
internal static class FailureAnswers
{
    /// <summary>The answers.</summary>
    public static IEnumerable<Answer> Of(FailureResult result)
    {
        var single = result.Effects.Where(effect => effect.Lost > 1).OrderByDescending(effect => effect.Lost).ToList();
        if (single.Count < 2)
            yield break;
        var worst = single[0];
        var rest = single.Skip(1).Take(5).Select(effect => $"{effect.Subject} {effect.Lost}").ToList();
        yield return new Answer(worst.Subject, "What is a single point of failure?",
            $"{Words.Capital(worst.Subject)} takes {worst.Lost} of {result.Bound.Endpoints.Count} endpoints with it{(rest.Count > 0 ? $"; then {Words.List(rest)}" : "")}. Each cable takes its own endpoint.");
    }
}
