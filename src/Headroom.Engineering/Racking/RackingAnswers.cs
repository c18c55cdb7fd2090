using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Racking;

/// <summary>Answers the questions people ask in front of a rack.</summary>
internal static class RackingAnswers
{
    /// <summary>The answers for every rack in which something is.</summary>
    public static IEnumerable<Answer> Of(RackingResult result)
    {
        foreach (var use in result.Racks)
        {
            var placed = use.Places.Where(place => place.Lowest is not null && place.Thing.Fills > 0).OrderByDescending(place => place.Lowest).ToList();
            if (placed.Count > 0)
                yield return new Answer(use.Rack.Id, "What goes where?", $"From the top: {string.Join(", ", placed.Select(Told))}.{Left(use)}");
        }
    }

    private static string Told(RackPlace place) =>
        $"{place.Thing.Id} at {place.Lowest}{(place.Thing.Fills > 1 ? $" to {place.Highest}" : "")}{(place.IsProposed ? " (proposed)" : "")}";

    private static string Left(RackUse use)
    {
        var without = use.Places.Where(place => place.Lowest is null && place.Thing.Fills > 0).Select(place => place.Thing.Id).ToList();
        return without.Count > 0 && use.Height is not null ? $" No place for {Words.List(without)}." : "";
    }
}
