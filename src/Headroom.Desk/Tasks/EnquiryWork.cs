using System.Globalization;
using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Plans;
using Headroom.Domain.Shown;
using Headroom.Planning;
using Headroom.Planning.Packing;

namespace Headroom.Desk.Tasks;

/// <summary>Works out a rough price range from the cheapest to the dearest design that is offered, and writes an enquiry note.</summary>
internal sealed class EnquiryWork(JobShelf shelf) : IDeskWork
{
    private const int MostQuestions = 14;

    // What one asks when somebody calls; common practice, no source.
    private static readonly (Func<Job, bool> IsOpen, string Question)[] Usual =
    [
        (_ => true, "What must work that does not now, and by which day?"),
        (_ => true, "Who decides, and who pays?"),
        (_ => true, "Who owns the building and what is above the ceiling, and when may one get in?"),
        (job => job.Survey.Lines.Count == 0, "Whose is the line to the outside, what does it give, and where does it come in?"),
        (job => job.Survey.Racks.Count == 0, "Is there a cupboard or rack, how deep and high is it inside, and is there a socket in it?"),
        (job => job.Survey.Listeners.Count == 0, "Who sits within hearing of the equipment?"),
        (job => job.Survey.Drops.Count == 0, "How far is it from the cupboard to each place, along the way a cable can take?"),
        (job => job.Policy.Outage.Runtime is null, "What must go on when the mains fails, and for how long?"),
    ];

    public string Kind => "enquiry";

    public byte[] Do(OpenJob open, WorkAsked asked, WorkPlace at)
    {
        var job = open.Sound!;
        at.Tell("the planner looks for the cheapest and the roomiest design");
        var plan = Planner.Propose(job, open.Models.Models, new PlanRequest(shelf.Today) { Effort = PackEffort.Usual with { Stop = at.Stop } });
        at.Stop.ThrowIfCancellationRequested();
        var (price, rests) = Price(job, open, plan);
        List<string> questions = [.. Usual.Where(one => one.IsOpen(job)).Select(one => one.Question), .. plan.Proposals.SelectMany(one => one.Ledger.Entries).Where(entry => entry.Verdict == Verdict.Unknown).Select(entry => entry.Question).OfType<string>().Select(LedgerInWords.Sentence).Distinct()];
        if (questions.Count > MostQuestions)
            questions = [.. questions.Take(MostQuestions), $"and {questions.Count - MostQuestions} more, which the ledger of a design asks"];
        return new KeptEnquiry(job.Name, LedgerModel.Day(shelf.Today), at.By, Known(job, open), price, rests, questions).ToBytes();
    }

    private static List<string> Known(Job job, OpenJob open) =>
    [
        .. job.Survey.Endpoints.GroupBy(one => one.Model).Select(group => $"{group.Count()} x {group.Key}{(open.Models.Models.Endpoints.TryGetValue(group.Key, out var model) ? $" ({model.Kind})" : "")}"),
        .. job.Survey.Listeners.Select(one => $"must not hear it: {one.Why ?? one.Id}{(one.Limit is { } limit ? $", at most {limit.Written}" : "")}"),
    ];

    private (string Price, IReadOnlyList<string> RestsOn) Price(Job job, OpenJob open, Plan plan)
    {
        if (plan.Proposals.Count == 0)
            return ("Not known: no design was found that keeps every limit as far as they are known.", [.. plan.Complaints, .. plan.Clashes.Select(clash => $"{clash.Requirement}: {clash.Relaxed}")]);
        List<string> rests = [$"{plan.Proposals.Count} designs that the planner offers, each studied in full; {open.Models.Models.Switches.Count} models of switches were open to it"];
        var offers = plan.Proposals.Select(one => JobShelf.Study(job with { Designs = [.. job.Designs.Where(other => other.Id != one.Design.Id), one.Design] }, open.Models, one.Design.Id, shelf.Today).Results.Money).ToList();
        if (offers.TrueForAll(offer => offer is not null && offer.Offer.Net > 0))
        {
            var missing = offers.SelectMany(offer => offer!.NotKnown.Select(line => line.What)).Distinct().ToList();
            rests.Add("hours, margin and goods as the firm's rates have them, before tax");
            if (missing.Count > 0)
                rests.Add($"not in it, since price or cost is not known: {string.Join(", ", missing.Take(6))}{(missing.Count > 6 ? $" and {missing.Count - 6} more" : "")}");
            return (Range([.. offers.Select(offer => offer!.Offer.Net)], offers[0]!.Currency, atLeast: missing.Count > 0), [.. rests, "it is no offer: nobody has seen the site"]);
        }

        rests.Add("switches, injectors, standby supplies and modules alone, at what the catalogue says they cost");
        rests.Add("not in it: work, cables, panels and what the firm earns, since no rates are known here");
        return (Range([.. plan.Proposals.Select(one => one.Cost.Goods)], plan.Proposals[0].Cost.Currency, atLeast: true), [.. rests, "it is no offer: nobody has seen the site"]);
    }

    private static string Range(IReadOnlyList<decimal> amounts, string currency, bool atLeast)
    {
        var (low, high) = (Shown(Math.Floor(amounts.Min() / 10) * 10), Shown(Math.Ceiling(amounts.Max() / 10) * 10));
        return atLeast ? $"At least {low} to {high} {currency}, and how much more is not known." : $"Between {low} and {high} {currency}.";
    }

    private static string Shown(decimal amount) => amount.ToString("#,0", CultureInfo.InvariantCulture).Replace(',', ' ');
}
