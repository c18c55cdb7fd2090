using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Heat;

/// <summary>Answers the questions people ask about heat.</summary>
internal static class HeatAnswers
{
    /// <summary>The answers for every place that shuts its air off and of which enough is known.</summary>
    public static IEnumerable<Answer> Of(HeatResult result)
    {
        foreach (var place in result.Places)
        {
            if (place.Box is null || place.Cases.MaxBy(one => one.Celsius) is not { Celsius: { } celsius } worst)
                continue;
            yield return new Answer(place.Space.Id, "How warm does it get in there?", How(place, worst, celsius));
            if (place.Load is { MostWatts: { } most })
                yield return new Answer(place.Space.Id, "Does it need cooling?", Cooling(result, place, most));
        }
    }

    private static string How(HeatPlace place, AirCase worst, double celsius) => worst.WorkedCounts
        ? $"{HeatWords.Tenth(celsius)} °C in case '{worst.Name}': {HeatWords.Tenth(worst.Around!.Value)} °C in {place.Space.Enclosure?.Beside} and {HeatWords.Tenth(worst.Rise!.Value)} K more for {Words.Of(Math.Round(place.Load.OrdinaryWatts!.Value))} W left inside; under its roof a third to a half more of that."
        : $"{HeatWords.Tenth(celsius)} °C in case '{worst.Name}', as written{(worst.Worked is { } worked ? $"; {HeatWords.Tenth(worked)} °C come out of the sums" : "")}.";

    private static string Cooling(HeatResult result, HeatPlace place, double most)
    {
        var warm = new List<string>();
        foreach (var unit in result.Units)
        {
            if (ReferenceEquals(unit.Place, place) && unit is { Worst: { } worst, Most: { } limit } && worst.MostInlet > limit)
                warm.Add(unit.Unit.Id);
        }

        var left = $"{Words.Of(Math.Round(most))} W at its most, {Words.Of(Math.Round(HeatFigures.BtuPerWatt * most))} BTU/h";
        return warm.Count == 0 ? $"Not for what stands in it: {left}, and nothing in it gets air beyond its rating." : $"Yes, or vents: {left}; {Words.List(warm)} would draw air beyond the rating.";
    }
}
