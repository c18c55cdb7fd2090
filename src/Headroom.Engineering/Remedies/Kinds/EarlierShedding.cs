using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Ports of low priority switched off earlier on battery; where something must go on working, it is given a high priority with it.</summary>
internal sealed class EarlierShedding : IRemedyKind
{
    private static readonly int[] Minutes = [10, 5, 2, 0];

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfStandby(entry))
            yield break;
        foreach (var supply in at.Design.Standby.Where(supply => supply.Id == entry.Subject))
        {
            var now = supply.Sheds?.FirstOrDefault(stage => stage.Priority == Priority.Low)?.After.Value.Value;
            var keep = at.Job.Policy.Outage.Keep;
            var kept = at.Bound.Endpoints.Where(endpoint => endpoint.TakesPower && endpoint.Port?.Switch?.Placed.FedBy == supply.Id && (keep.Contains(endpoint.Id) || keep.Contains(endpoint.Model.Kind)))
                .GroupBy(endpoint => endpoint.Port!.Switch!.Id).ToList();
            foreach (var minutes in Minutes.Where(minutes => !(now <= minutes * 60)))
            {
                var stages = (supply.Sheds ?? []).Where(stage => stage.Priority != Priority.Low).Prepend(new(Priority.Low, Delta.Value<Seconds>($"{minutes} min")));
                var change = Delta.Of(at) with { Standby = [Delta.Standby(supply.Id) with { Sheds = [.. stages] }] };
                var text = $"{supply.Id}: ports of low priority off {(minutes == 0 ? "at once" : $"after {minutes} min")} on battery";
                yield return Idea(text, change);
                if (kept.Count > 0)
                {
                    var first = Words.List([.. kept.SelectMany(group => group.Select(endpoint => endpoint.Id))], most: 12);
                    yield return Idea($"{text}, high priority for {first}", change with { Switches = [.. kept.Select(group => ServedFirst.Of(group.Key, group.Select(endpoint => endpoint.Id)))] });
                }
            }
        }
    }

    private static RemedyIdea Idea(string text, Design change) => new("shedding", text, change) { BuysNothing = true, Minutes = Entries.Setting };
}
