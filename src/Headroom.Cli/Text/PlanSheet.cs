using System.Globalization;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Plans;

namespace Headroom.Cli.Text;

/// <summary>The designs of a plan, one below the other, then why the others lost.</summary>
internal static class PlanSheet
{
    private const int MostLosers = 5;

    /// <summary>Writes it.</summary>
    public static string Write(Plan plan, Pen pen)
    {
        var page = new Page(pen);
        page.Paragraph($"{plan.Job} · designs proposed · {plan.On.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}");
        if (plan.MayDiffer)
            page.Paragraph("Stopped before the end: another run may come to something else.");
        if (plan.Assumed.Count > 0)
            page.Paragraph($"Planned with: {string.Join("; ", plan.Assumed)}.");
        foreach (var proposal in plan.Proposals)
            WriteProposal(page, proposal);
        if (plan.Proposals.Count == 0)
            WriteNone(page, plan);
        else
            WriteLosers(page, plan);
        page.Gap();
        page.Paragraph($"{Words.Count(plan.Studied, "design was", "designs were")} studied in full.{(plan.Proposals.Count > 0 ? " --write puts those shown into the job file." : "")}");
        return page.ToString();
    }

    private static void WriteProposal(Page page, Proposal proposal)
    {
        page.Gap();
        page.Edges(string.Join(", ", proposal.Roles), $"{Money(proposal.Cost.Total)} {proposal.Cost.Currency}");
        page.Paragraph(proposal.Bought, 2, 4);
        var cost = proposal.Cost;
        if (cost.Total != cost.Goods)
            page.Paragraph($"purchase {Money(cost.Goods)}, labour {Money(cost.Labour)}, energy {Money(cost.Energy)}, swaps {Money(cost.Swaps)}", 2, 4);
        page.Paragraph(Proof(proposal.Proof), 2, 4);
        page.Paragraph(Counts(proposal.Ledger), 2, 4);
        page.Paragraph(Free(proposal), 2, 4);
        foreach (var setting in proposal.Settings)
            page.Paragraph(setting, 2, 4);
        foreach (var entry in proposal.Ledger.Entries.Where(entry => entry.Verdict is Verdict.Unknown && entry.Question is not null).DistinctBy(entry => entry.Question).Take(4))
            page.Paragraph($"asks: {entry.Question}", 2, 4);
        if (proposal.Binding.Count > 0)
            page.Paragraph($"binds first: {string.Join(", ", proposal.Binding)}", 2, 4);
    }

    private static string Proof(PlanProof proof) => proof switch
    {
        { Proved: true } => $"proved: {proof.By}",
        { Gap: { } gap } => string.Create(CultureInfo.InvariantCulture, $"at most {100 * gap:0.0} % above the best possible"),
        _ => $"not proved: {proof.By}",
    };

    private static string Counts(Ledger ledger)
    {
        var counts = new[] { Verdict.Short, Verdict.Tight, Verdict.Unknown, Verdict.Clear }.Select(verdict => $"{ledger.Count(verdict)} {Words.Of(verdict)}");
        var building = ledger.Count(Verdict.Short) + ledger.Count(Verdict.Tight) > 0 ? "; what is short or tight is the building's, in every design" : "";
        return string.Join(", ", counts) + building;
    }

    private static string Free(Proposal proposal)
    {
        var watts = proposal.FreeWatts is { } free ? $", {Numbers.Show(free, "W")}" : "";
        var loud = proposal.Loudest is { } level ? string.Create(CultureInfo.InvariantCulture, $"; {level:0.0} dB(A) of it at the nearest ear") : "";
        return $"free: {Words.Count(proposal.FreePorts, "copper port", "copper ports")}, {proposal.FreePowered} of them with power{watts}{loud}";
    }

    private static void WriteLosers(Page page, Plan plan)
    {
        Write(page, "Why nothing cheaper", plan.Refused.Where(one => one.Why == "cheaper").Reverse());
        Write(page, "The next dearer", plan.Refused.Where(one => one.Why == "dearer"));
        Write(page, "One box alone", plan.Refused.Where(one => one.Why == "single box"));
        Write(page, "Designs of the job", plan.Refused.Where(one => one.Why == "of the job"));
        Write(page, "Not considered", plan.Refused.Where(one => one.Why == "not considered"));
    }

    private static void Write(Page page, string title, IEnumerable<RefusedSet> sets)
    {
        var all = sets.ToList();
        if (all.Count == 0)
            return;
        page.Gap();
        page.Line(title);
        foreach (var set in all.Take(MostLosers))
        {
            page.Edges($"  {set.Bought}", set.Total is { } total ? Money(total) : "");
            page.Paragraph(set.Because, 4, 4);
        }

        if (all.Count > MostLosers)
            page.Line($"  {all.Count - MostLosers} more (--format json has all)");
    }

    private static void WriteNone(Page page, Plan plan)
    {
        page.Gap();
        page.Paragraph(plan.Clashes.Count > 0 ? "No design is possible. These requirements clash; giving up any one of them opens the way:"
            : plan.MayDiffer ? "No design came up before the search was stopped; whether there is one is not known."
            : "No design came up, whichever of the requirements is given up.");
        foreach (var clash in plan.Clashes)
        {
            page.Paragraph(clash.Requirement, 2, 4);
            page.Paragraph(clash.Relaxed, 4, 4);
        }

        Write(page, "What was tried", plan.Refused.Where(one => one.Why != "not considered"));
        Write(page, "Not considered", plan.Refused.Where(one => one.Why == "not considered"));
    }

    private static string Money(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);
}
