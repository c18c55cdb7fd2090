using Headroom.Planning.Packing;

namespace Headroom.Planning.Tests.Packing;

internal static class Campus
{
    // Invented: 2 000 endpoints of 12 kinds in 40 places on a ring, each reached from one to three of them; ten models.
    private static readonly (int Ports, long Watts, long Cost, int Class)[] Models =
        [(8, 500, 95, 1), (8, 900, 140, 2), (16, 1100, 210, 1), (16, 2000, 290, 2), (24, 1700, 300, 1), (24, 2900, 390, 2), (24, 4600, 560, 3), (48, 3700, 640, 1), (48, 6000, 790, 2), (48, 9000, 990, 3)];

    private static readonly (long Watts, int Class, int Share)[] Kinds =
        [(35, 1, 18), (64, 1, 16), (70, 1, 10), (95, 1, 10), (128, 1, 9), (154, 1, 9), (160, 2, 8), (187, 2, 6), (240, 2, 5), (300, 2, 4), (390, 3, 3), (450, 3, 2)];

    public static PackProblem Of(int endpoints, int places)
    {
        var state = 20261125u;
        var counts = new Dictionary<(int Kind, string Reach), int>();
        for (var i = 0; i < endpoints; i++)
        {
            var kind = Pick(Next(ref state, 100));
            var first = Next(ref state, places);
            var reach = Enumerable.Range(first, 1 + Next(ref state, 3)).Select(place => place % places).Order();
            var key = (kind, string.Join(',', reach));
            counts[key] = counts.GetValueOrDefault(key) + 1;
        }

        var kinds = counts.OrderBy(pair => pair.Key.Kind).ThenBy(pair => pair.Key.Reach, StringComparer.Ordinal).ToList();
        return new(
            places,
            [.. kinds.Select(pair => new PackKind($"{pair.Key}", pair.Value, [.. pair.Key.Reach.Split(',').Select(int.Parse)]))],
            [.. Models.Select((model, b) => new PackBox($"m{b}", model.Cost, [model.Ports], [.. kinds.Select((pair, k) => (pair.Key.Kind, k)).Where(at => Kinds[at.Kind].Class <= model.Class).Select(at => new PackServe(at.k, 0, [Kinds[at.Kind].Watts]))], [model.Watts]))]);
    }

    private static int Pick(int share)
    {
        var kind = 0;
        for (; share >= Kinds[kind].Share; kind++)
            share -= Kinds[kind].Share;
        return kind;
    }

    // A linear congruential sequence, the same everywhere. Source: Numerical Recipes, from memory.
    private static int Next(ref uint state, int below)
    {
        state = state * 1664525 + 1013904223;
        return (int)(state >> 8) % below;
    }
}
