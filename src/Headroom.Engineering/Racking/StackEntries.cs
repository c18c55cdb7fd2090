using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Racking;

/// <summary>Units stacked on a desk or shelf: the gap that their feet keep free.</summary>
internal static class StackEntries
{
    /// <summary>Adds an entry for each unit that is stacked on another.</summary>
    public static void Add(List<LedgerEntry> entries, IReadOnlyList<Stacked> stacks, Policy policy)
    {
        var reserve = policy.ReserveOf("clearance");
        foreach (var stack in stacks)
        {
            var feet = stack.FeetMillimetres;
            var entry = RackDraft.Of(stack.Thing.Id, "feet", ("gap below it", "mm"), "clearance").With(
                Stacked.GapMillimetres,
                feet,
                reserve,
                new LateStory(
                    e => $"The feet of {stack.Thing.Id} keep {Words.Of(e.Limit!.Value)} mm free above {stack.Below.Id}; air wants {Words.Of(Stacked.GapMillimetres)} mm.",
                    e => new Working(
                        "height of its feet",
                        [new($"feet of {stack.Thing.Id}", feet, "mm", Origins.Of(stack.Thing.Body?.Feet)), new("gap that air needs", Stacked.GapMillimetres, "mm", "common practice, no source"), LateStory.ReserveInput(e, reserve)],
                        [new("gap", "as written", feet, "mm")],
                        "common practice, no source; what the maker says comes first"),
                    e => [new("height of its feet", "mm", feet, Stacked.GapMillimetres, Stacked.GapMillimetres + reserve.Of(feet ?? 0), UpTo: false)]));
            entries.Add(entry with
            {
                Sense = Sense.AtLeast,
                Question = feet is null ? $"has {stack.Thing.Id} feet? measure the gap between it and {stack.Below.Id}" : null,
                Advice = entry.Studied == Verdict.Short ? [$"stick-on feet under {stack.Thing.Id}", "or a shelf of its own"] : [],
            });
        }
    }
}
