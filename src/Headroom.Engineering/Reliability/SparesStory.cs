using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Reliability;

/// <summary>Tells how many spares a shelf wants until the supplier has sent new ones.</summary>
internal sealed class SparesStory(FleetRate rate, Reserve reserve) : PlainStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var inputs = RateWorking.Inputs(rate);
        inputs.Add(new("in service", rate.Row.Units, "", rate.CountedIn));
        inputs.Add(new("until a new one comes", rate.LeadHours / 24, "d", Origins.Of(rate.Row.Supplier)));
        inputs.Add(new("probability wanted", 100 * rate.Certainty, "%", rate.Row.Certainty is null ? "not written: common practice, no source" : Origins.Of(rate.Row.Certainty)));
        inputs.Add(ReserveInput(entry));
        var steps = new List<WorkingStep>();
        if (rate is { Belief: { } belief, LeadHours: { } lead, Row.Units: { } units })
        {
            steps.Add(new("failures to be expected until then", $"{units} · {Words.Of(lead)} h · {Words.Of(belief.Failures)} / {Words.Of(belief.Hours)} h", units * lead * belief.MeanRate, ""));
            var most = rate.Needed ?? 0;
            for (var spares = Math.Max(0, most - 2); spares <= most; spares++)
                steps.Add(new($"{spares} are enough in", "negative binomial", 100 * SpareParts.Enough(belief, units * lead, spares), "%"));
        }

        return new Working("smallest s with P(X ≤ s) ≥ the probability wanted; X by Gamma and Poisson", inputs, steps, "predictive distribution, NIST/SEMATECH e-Handbook 8.4.6; with few failures seen it wants more than a Poisson sum with the rate put in");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (entry is not { Limit: { } there } || rate is not { Belief: { } belief, LeadHours: { } lead, Row.Units: { } units } || units == 0)
            return [];
        return [new("in service", "units", units, Most(there, belief, lead), Most(Kept(there), belief, lead)), new("spares on the shelf", "pieces", there, entry.Demand, entry.Demand is { } need ? LimitKeeping(need) : null, UpTo: false)];
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) =>
        $"for {rate.Row.Units} {rate.Row.Model} in service and {Words.Of((rate.LeadHours ?? 0) / 24)} days until a new one comes {Words.Of(entry.Demand ?? 0)} on the shelf are enough with {Words.Of(100 * rate.Certainty)} %; {Words.Of(entry.Limit ?? 0)} lie there.";

    // The most units for which so many spares are enough.
    private double? Most(double spares, RateBelief belief, double lead)
    {
        var pieces = (int)Math.Floor(spares + 1e-9);
        if (pieces < 0)
            return null;
        var (least, most) = (0, 1);
        while (most < 1_000_000 && SpareParts.Enough(belief, most * lead, pieces) >= rate.Certainty)
            (least, most) = (most, 2 * most);
        while (most - least > 1)
        {
            var middle = (least + most) / 2;
            (least, most) = SpareParts.Enough(belief, middle * lead, pieces) >= rate.Certainty ? (middle, most) : (least, middle);
        }

        return least;
    }
}
