using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Tells how full a pathway is, how many cables more go in, and how wide it would have to be.</summary>
internal sealed class FillStory(PathwayUse use, Reserve reserve) : CablingStory(reserve)
{
    // A search that never ends would end here; no tray takes so many.
    private const int MostTried = 5000;

    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var pathway = use.Pathway;
        var inputs = new List<WorkingInput>
        {
            pathway.Inside is { } inside
                ? new("inner diameter", 1000 * inside.Value.Value, "mm", Origins.Of(inside))
                : new("inner cross-section", use.InsideSquareMillimetres, "mm²", Origins.Of(pathway.Area)),
        };
        foreach (var lying in pathway.Already ?? [])
            inputs.Add(new($"{lying.Count} cables that lie there", 1000 * lying.Diameter.Value.Value, "mm", Origins.Of(lying.Diameter)));
        foreach (var group in use.Cables.GroupBy(cable => (Name: cable.Piece.Cable ?? cable.Piece.Fibre?.Id ?? "not known", cable.Millimetres)))
            inputs.Add(new($"{Words.Count(group.Count(), "cable")} '{group.Key.Name}' ({Words.List([.. group.Select(cable => cable.Drop)])})", group.Key.Millimetres, "mm", Diameter(group.First())));
        inputs.Add(ReserveInput(entry));
        var steps = new List<WorkingStep>
        {
            new("cables in it", use.AlreadyKnown ? "counted" : "counted; what lies there already is not known", use.Count, ""),
            new("cross-section of the cables", "Σ π d² / 4", use.FilledSquareMillimetres, "mm²"),
            new("cross-section inside", pathway.Inside is null ? "as surveyed" : "π D² / 4", use.InsideSquareMillimetres, "mm²"),
            new("fill", "the one over the other", 100 * use.Share, "%"),
            new("most for so many", Rule(), 100 * use.MostShare, "%"),
        };
        AddBends(steps);
        return new Working("fill = Σ d² / D², each cable round", inputs, steps, "NFPA 70, chapter 9, Table 1: 53 % for one cable, 31 % for two, 40 % for more, 60 % up to 0.6 m; TIA-569 for trays, 50 %, from memory");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (use.InsideSquareMillimetres is not { } inside || entry.Demand is null || entry.Parts is not null)
            return [];
        var rows = new List<Holds>(2);
        if (use.ThickestMillimetres is { } thickest)
            rows.Add(new($"cables in it, the next ones {Words.Of(thickest)} mm thick", "cables", use.Count, MostCables(thickest, inside, Domain.Jobs.Reserve.Nothing), MostCables(thickest, inside, Reserve)));
        if (use.Pathway.Inside is { } diameter)
            rows.Add(new("inner diameter", "mm", 1000 * diameter.Value.Value, Diameter(use.MostShare), Diameter(KeptShare(use.MostShare, Reserve)), UpTo: false));
        return rows;
    }

    /// <summary>What makes room.</summary>
    public List<string> Advice(LedgerEntry entry)
    {
        var advice = new List<string>();
        if (entry.Studied == Verdict.Tight)
            advice.Add($"put nothing more into {use.Pathway.Id}");
        if (use is { IsConduit: true, Pathway.Inside: not null })
        {
            foreach (var size in ConduitSize.All)
            {
                if (size.InsideMillimetres < Diameter(KeptShare(use.MostShare, Reserve)) - 1e-9)
                    continue;
                advice.Add($"a conduit of {size.Trade} in ({Words.Of(size.InsideMillimetres)} mm inside) would hold them");
                break;
            }
        }

        if (entry.Studied == Verdict.Short)
            advice.Add("or take out what is dead, or give some cables another way");
        return advice;
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) =>
        $"{Words.Count(use.Count, "cable")} fill {Words.Of(entry.Demand ?? 0)} % of {use.Pathway.Id}, which may be {Words.Of(entry.Limit ?? 0)} % full{Bends()}.";

    private static string Diameter(PathwayCable cable) => Origins.Of(cable.Piece.Copper?.Diameter ?? cable.Piece.Fibre?.Diameter);

    private static double KeptShare(double most, Reserve reserve) => most - reserve.Of(100 * most) / 100;

    private double Diameter(double share) => Math.Sqrt(4 * use.FilledSquareMillimetres / (Math.PI * share));

    private string Rule() => !use.IsConduit ? "tray or trunking"
        : use.MostShare == ConduitFill.NippleShare ? "a piece of up to 0.6 m"
        : use.Count switch { 1 => "one cable", 2 => "two cables", _ => "three or more" };

    private int? MostCables(double millimetres, double inside, Reserve reserve)
    {
        var (area, filled) = (ConduitFill.AreaSquareMillimetres(millimetres), use.FilledSquareMillimetres);
        int? most = null;
        for (var count = use.Count; count < use.Count + MostTried; count++)
        {
            var share = (filled + (count - use.Count) * area) / inside;
            if (share <= KeptShare(use.MostShareOf(count), reserve) + 1e-9)
                most = count;
            else if (count >= 3)
                break;
        }

        return most ?? Fewer(area, inside, reserve);
    }

    // Too many already: how many may stay, if those taken out are as thick.
    private int? Fewer(double area, double inside, Reserve reserve)
    {
        for (var count = use.Count - 1; count > 0; count--)
        {
            var left = use.FilledSquareMillimetres - (use.Count - count) * area;
            if (left >= 0 && left / inside <= KeptShare(use.MostShareOf(count), reserve) + 1e-9)
                return count;
        }

        return null;
    }

    private void AddBends(List<WorkingStep> steps)
    {
        var pathway = use.Pathway;
        if (pathway.LongestPull is { } pull)
            steps.Add(new("longest pull", $"at most {Words.Of(PullRules.BetweenPointsMetres)} m between pull points (TIA-569, from memory)", pull.Value.Value, "m"));
        if (pathway.Bends is { } bends)
            steps.Add(new("right-angle bends", $"at most {PullRules.BetweenPointsBends} between pull points (TIA-569, from memory)", bends, ""));
        if (pathway.BendRadius is { } radius)
            steps.Add(new("tightest bend", $"at least {Words.Of(1000 * PathwayEntries.LeastRadiusMetres(use))} mm for the conduit and what lies in it (TIA-569, TIA-568.0, from memory)", 1000 * radius.Value.Value, "mm"));
    }

    private string Bends() => use.Pathway.Bends > PullRules.BetweenPointsBends ? $"; with {use.Pathway.Bends} bends between pull points that is no easy pull" : "";
}
