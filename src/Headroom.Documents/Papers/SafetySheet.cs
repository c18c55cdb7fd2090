using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;

namespace Headroom.Documents.Papers;

/// <summary>The cautions of a job gathered: what can hurt somebody or break something, where, and who may do that work.</summary>
internal static class SafetySheet
{
    /// <summary>What stands on it.</summary>
    public static IReadOnlyList<Block> Blocks(PaperInput input)
    {
        var cautions = input.Entries(inside: false).SelectMany(entry => entry.Cautions.Select(caution => (Caution: caution, entry.Subject)))
            .GroupBy(one => one.Caution.Code).OrderBy(group => group.Key, StringComparer.Ordinal).ToList();
        return
        [
            new Facts([("on site speaks", ""), ("emergency call", ""), ("first aid is", ""), ("mains is cut at", ""), ("fire extinguisher", ""), ("nearest hospital", "")]),
            cautions.Count == 0
                ? new Words("The study found nothing that calls for a caution of its own. What holds everywhere still holds: mains wiring only by a licensed person, ladders secured, and nobody alone in a loft.")
                : new Table(
                    [new("where") { Least = 90 }, new("what can happen, and what to do") { Grows = true }, new("who may do it") { Least = 110 }, new("read by, initials") { Least = 60 }],
                    [.. cautions.Select(group => new Row(
                    [
                        new(Places([.. group.Select(one => one.Subject).Distinct()]), Lettering.Cell with { Face = Face.Strong }),
                        new(group.First().Caution.Text), new(group.First().Caution.Who),
                    ]))]),
            new Heading("Seen on the day"),
            new Table([new("hazard, and what was done about it") { Grows = true }, new("by") { Least = 70 }, new("time") { Least = 50 }], [.. Written.Blank(5)]),
            new Words("Cautions are those that the sums call for. They take the place of no law, no local code and no look around before work begins.", Lettering.Label),
        ];
    }

    private const int MostPlaces = 10;

    private static string Places(IReadOnlyList<string> places) => places.Count <= MostPlaces
        ? string.Join(", ", places)
        : $"{string.Join(", ", places.Take(MostPlaces))} and {places.Count - MostPlaces} more";
}
