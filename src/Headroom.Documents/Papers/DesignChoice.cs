using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Choices;
using Headroom.Documents.Layout;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Plans;
using Headroom.Domain.Shown;

namespace Headroom.Documents.Papers;

/// <summary>Why this design: the designs that were proposed, cost against sound, the values at which another one would be cheaper, and what was not taken. For the firm's own eyes.</summary>
internal static class DesignChoice
{
    private const int MostRefused = 8;

    /// <summary>What stands on it; null when nothing was planned.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        if (input.Plan is not { } plan)
            return null;
        var blocks = new List<Block> { new Facts([("site", input.Job.Name), ("design of today", input.Ledger.Design), ("worked out for", Written.Day(plan.On)), ("decided by", "")]) };
        blocks.AddRange(plan.Proposals.Count > 0 ? Proposed(plan) : None(plan));
        var refused = plan.Refused.Where(one => one.Why != "not considered").ToList();
        if (refused.Count > 0)
        {
            blocks.Add(new Heading("Not taken"));
            blocks.Add(new Table([new("bought") { Grows = true }, new("cost", Anchor.End), new("because") { Least = 190 }], [.. refused.Take(MostRefused).Select(one => Row.Of(one.Bought, one.Total is { } total ? Amount(total) : "", LedgerInWords.Sentence(one.Because)))]));
            if (refused.Count > MostRefused)
                blocks.Add(new Words($"{Numbers.Show(refused.Count - MostRefused)} more, which headroom propose tells.", Lettering.Label));
        }

        if (FrontDrawing.Of(input) is { } front)
            blocks.AddRange([new Gap(10), new Drawn(front)]);
        if (TurningRuler.Of(input) is { } ruler)
            blocks.AddRange([new Gap(14), new Drawn(ruler)]);
        return blocks;
    }

    private static IEnumerable<Block> Proposed(Plan plan)
    {
        if (plan.MayDiffer)
            yield return new Words("The plan was stopped before its end: another run may come to something else.", Lettering.Body with { Face = Face.Slanted });
        if (plan.Assumed.Count > 0)
            yield return new Words($"Planned with: {string.Join("; ", plan.Assumed)}.");
        yield return new Heading("Designs to choose between");
        yield return new Table(
            [
                new("as") { Least = 64 }, new("bought") { Grows = true }, new($"cost [{plan.Proposals[0].Cost.Currency}]", Anchor.End), new("free ports, with power", Anchor.End), new("free [W]", Anchor.End), new("heard [dB(A)]", Anchor.End),
                new("short, tight, unknown", Anchor.End), new("proof") { Least = 110 },
            ],
            [.. plan.Proposals.Select(Proposal)]);
        yield return new Words("Cost is what the designs differ in: units, modules and the work on them, and where the job asks for it energy and exchanges over the years. Heard: the equipment alone at the ear that hears it most.", Lettering.Label);
    }

    private static Row Proposal(Proposal one) => Row.Of(
        Written.List(one.Roles), one.Bought, Amount(one.Cost.Total), $"{Numbers.Show(one.FreePorts)}, {Numbers.Show(one.FreePowered)}", Written.Figure(one.FreeWatts), one.Loudest is { } level ? Numbers.Show(Math.Round(level, 1)) : "?",
        $"{one.Ledger.Count(Verdict.Short)}, {one.Ledger.Count(Verdict.Tight)}, {one.Ledger.Count(Verdict.Unknown)}",
        one.Proof.Proved ? $"proved: {one.Proof.By}" : one.Proof.Gap is { } gap ? $"at most {Numbers.Show(Math.Round(100 * gap, 1), "%")} above the best possible" : $"not proved: {one.Proof.By}");

    private static IEnumerable<Block> None(Plan plan)
    {
        yield return new Words("No design is possible. These requirements clash; giving up any one of them opens the way:");
        yield return new Table([new("required") { Grows = true }, new("without it") { Grows = true }], [.. plan.Clashes.Select(clash => Row.Of(clash.Requirement, clash.Relaxed))]);
    }

    private static string Amount(decimal amount) => NumberManner.Current.Amount(amount.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture));
}
