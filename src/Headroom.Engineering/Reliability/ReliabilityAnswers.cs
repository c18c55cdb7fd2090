using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Reliability;

/// <summary>Compares the models of a fleet in words.</summary>
internal static class ReliabilityAnswers
{
    /// <summary>The answers: each pair of models of which something was seen, then each model that stood both hot and cool.</summary>
    public static IEnumerable<Answer> Of(ReliabilityResult result)
    {
        foreach (var pair in Pairs(result.Rates))
            yield return new Answer(pair.First, $"Does it fail more often than {pair.Second}?", pair.Sentence);
        foreach (var places in Places(result.Rates))
            yield return new Answer(places.Model, "Does it fail more often in hot places?", places.Sentence);
    }

    /// <summary>Each pair of models of one kind of which something was seen.</summary>
    public static IEnumerable<ModelComparison> Pairs(IReadOnlyList<FleetRate> rates)
    {
        for (var i = 0; i < rates.Count; i++)
        {
            for (var j = i + 1; j < rates.Count; j++)
            {
                if (rates[i] is { Seen: { } one } first && rates[j] is { Seen: { } other } second && first.Kind == second.Kind)
                    yield return new ModelComparison(first.Row.Model, second.Row.Model, one, other) { Within = Within(first.Strata, second.Strata) };
            }
        }
    }

    /// <summary>Each model that stood both hot and cool.</summary>
    public static IEnumerable<PlaceComparison> Places(IReadOnlyList<FleetRate> rates)
    {
        foreach (var rate in rates)
        {
            if (rate.Strata is { } strata)
                yield return new PlaceComparison(rate.Row.Model, strata.Hot, strata.Cool);
        }
    }

    private static IReadOnlyList<(FieldRecord One, FieldRecord Other)> Within((FieldRecord Hot, FieldRecord Cool)? one, (FieldRecord Hot, FieldRecord Cool)? other) =>
        one is { } first && other is { } second ? [(first.Hot, second.Hot), (first.Cool, second.Cool)] : [];
}
