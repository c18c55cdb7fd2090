using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Works out what lies in each pathway that a drop takes.</summary>
internal static class PathwaySums
{
    private const double SquareMillimetresPerSquareMetre = 1e6;

    /// <summary>The pathways in use, in the order of the survey.</summary>
    public static List<PathwayUse> Of(BoundDesign bound)
    {
        var uses = new List<PathwayUse>();
        if (bound.Job.Survey.Pathways.Count == 0)
            return uses;
        var cables = new Dictionary<string, List<PathwayCable>>();
        foreach (var run in bound.Runs)
        {
            foreach (var piece in run.Pieces)
            {
                if (piece.Written?.By is { } by)
                    Add(cables, by, run.Drop.Id, piece);
            }
        }

        foreach (var pathway in bound.Job.Survey.Pathways)
        {
            if (cables.TryGetValue(pathway.Id, out var its))
                uses.Add(Use(pathway, its));
        }

        return uses;
    }

    // A drop that comes by twice is one cable.
    private static void Add(Dictionary<string, List<PathwayCable>> cables, string by, string drop, BoundPiece piece)
    {
        if (!cables.TryGetValue(by, out var list))
            cables[by] = list = [];
        if (list.Count == 0 || list[^1].Drop != drop)
            list.Add(new PathwayCable(drop, piece, 1000 * (piece.Copper?.Diameter ?? piece.Fibre?.Diameter)?.Value.Value));
    }

    private static PathwayUse Use(Pathway pathway, List<PathwayCable> cables)
    {
        var (filled, count) = (0.0, cables.Count);
        var notMeasured = new List<PathwayCable>();
        foreach (var lying in pathway.Already ?? [])
        {
            filled += lying.Count * ConduitFill.AreaSquareMillimetres(1000 * lying.Diameter.Value.Value);
            count += lying.Count;
        }

        foreach (var cable in cables)
        {
            if (cable.Millimetres is { } d)
                filled += ConduitFill.AreaSquareMillimetres(d);
            else
                notMeasured.Add(cable);
        }

        var use = new PathwayUse
        {
            Pathway = pathway,
            Cables = cables,
            InsideSquareMillimetres = Inside(pathway),
            FilledSquareMillimetres = filled,
            Count = count,
            NotMeasured = notMeasured,
            MostShare = 0,
        };
        return use with { MostShare = Most(use) };
    }

    private static double? Inside(Pathway pathway) => pathway.Inside is { } inside
        ? ConduitFill.AreaSquareMillimetres(1000 * inside.Value.Value)
        : SquareMillimetresPerSquareMetre * pathway.Area?.Value.Value;

    // While nobody knows what lies there already, there may be more cables than are counted: the kindest rule of all possible counts.
    private static double Most(PathwayUse use) => use.AlreadyKnown || use.Count >= 3 || !use.IsConduit
        ? use.MostShareOf(use.Count)
        : Math.Max(use.MostShareOf(use.Count), use.MostShareOf(3));
}
