using System.Globalization;
using Headroom.Desk.Work;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Choices;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Plans;
using Headroom.Domain.Shown;
using Headroom.Engineering;
using Headroom.JobFiles.Editing;
using Headroom.Planning;
using Headroom.Planning.Packing;

namespace Headroom.Desk.Tasks;

/// <summary>Lets the planner look for designs.</summary>
internal sealed class PlanWork(JobShelf shelf) : IDeskWork
{
    public string Kind => "plan";

    public byte[] Do(OpenJob open, WorkAsked asked, WorkPlace at)
    {
        var job = open.Sound!;
        at.Tell("the planner looks for the cheapest design");
        var plan = Planner.Propose(job, open.Models.Models, new PlanRequest(shelf.Today)
        {
            Today = asked.Design,
            Effort = PackEffort.Usual with
            {
                Stop = at.Stop,
                Told = (best, bound) => at.Tell(best > 0
                    ? string.Create(CultureInfo.InvariantCulture, $"best so far {best / 100.0:0.00}, none below {bound / 100.0:0.00}; the planner looks whether there is anything better still")
                    : string.Create(CultureInfo.InvariantCulture, $"nothing yet, none below {bound / 100.0:0.00}")),
            },
        });
        if (plan.Proposals.Count == 0)
            at.Stop.ThrowIfCancellationRequested();
        var like = Study.DesignOf(job, asked.Design);
        List<string> said = [.. plan.Complaints, .. plan.Clashes.Select(clash => $"{clash.Requirement}: {clash.Relaxed}"), .. plan.Assumed.Select(LedgerInWords.Sentence)];
        if (plan.Complaints.Count == 0)
            said.Insert(0, plan.Proposals.Count == 0 ? "No design keeps every limit." : $"{plan.Studied} designs were studied; {plan.Proposals.Count} are offered.");
        if (plan.MayDiffer)
            said.Add("It was stopped: another run may come to something better.");
        return new KeptFinds(said, [.. plan.Proposals.Select(proposal => new KeptRemedy(
            string.Join(", ", proposal.Roles),
            proposal.Bought,
            $"costs {proposal.Cost.Total.ToString("0.00", CultureInfo.InvariantCulture)} {proposal.Cost.Currency} over the years, units and modules only",
            [.. Speaks(proposal)],
            [],
            $"{proposal.Ledger.Count(Verdict.Short)} short, {proposal.Ledger.Count(Verdict.Tight)} tight, {proposal.Ledger.Count(Verdict.Unknown)} unknown",
            [],
            proposal.Design.Id,
            WholeDesignText.Of(proposal.Design, like is { Fittings.Count: > 0 } ? like : null)))]) { Drawings = Drawings(plan) }.ToBytes();
    }

    private static IReadOnlyList<KeptDrawing> Drawings(Plan plan) =>
        FrontDrawing.Of(plan, null) is { } front ? [new(front.Title, SvgCanvas.Write(front))] : [];

    private static IEnumerable<string> Speaks(Proposal proposal)
    {
        yield return $"{proposal.FreePorts} ports left free, {proposal.FreePowered} of them give power";
        if (proposal.FreeWatts is { } watts)
            yield return $"{Numbers.Show(watts, "W")} left for ports in the worst state, reserve included";
        if (proposal.Loudest is { } loud)
            yield return $"the equipment alone is {Numbers.Show(loud, "dB(A)")} at the ear that hears it most";
        if (proposal.Moved is { } moved)
            yield return $"{moved} cords are moved against the design of today";
        foreach (var setting in proposal.Settings)
            yield return setting;
    }
}
