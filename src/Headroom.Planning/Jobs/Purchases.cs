using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Plans;

namespace Headroom.Planning.Jobs;

/// <summary>Which switches may be bought at all: with a price, allowed by the pins, and right by themselves where they stand.</summary>
internal sealed class Purchases(Job job, Catalogue catalogue, PlanRequest request, Gate gate, PlanMemory memory)
{
    private readonly UnitPrices _prices = new(job, catalogue);

    /// <summary>What was set aside, and why.</summary>
    public List<RefusedSet> SetAside { get; } = [];

    /// <summary>Those of which something is not known that a limit hangs on.</summary>
    public List<Purchase> NotKnown { get; } = [];

    /// <summary>Those that may be bought.</summary>
    public List<Purchase> Find(IReadOnlyList<string?> places)
    {
        var found = new List<Purchase>();
        foreach (var model in catalogue.Switches.Values.OrderBy(model => model.Id, StringComparer.Ordinal))
        {
            if (!Allowed(model))
                continue;
            foreach (var supply in model.Supplies.Count > 0 ? model.Supplies : [null!])
            {
                foreach (var owned in request.Pins.Owned.ContainsKey(model.Id) ? new[] { true, false } : [false])
                    Add(model, supply, owned, places, found);
            }
        }

        return found;
    }

    /// <summary>What people call a switch with a supply.</summary>
    public static string NameOf(SwitchModel model, SupplyModel? supply, bool owned) =>
        (supply is null || model.Supplies.Count < 2 ? model.Id : $"{model.Id}, supply {supply.Id}") + (owned ? ", owned" : "");

    private bool Allowed(SwitchModel model)
    {
        var pins = request.Pins;
        if (pins.Models.Count > 0 && !pins.Models.Contains(model.Id))
            return false;
        return !pins.Fanless || model.Sound?.Fans == 0;
    }

    private void Add(SwitchModel model, SupplyModel? supply, bool owned, IReadOnlyList<string?> places, List<Purchase> found)
    {
        var name = NameOf(model, supply, owned);
        if (_prices.Of(model, supply, owned) is not { } cost)
        {
            SetAside.Add(new("not considered", name, null, null, "its price is not known"));
            return;
        }

        var purchase = new Purchase(name, model, supply, cost, owned, []);
        var heard = new List<IReadOnlyDictionary<string, double>>();
        var (may, unknown, worst) = (new List<int>(), new List<int>(), (LedgerEntry?)null);
        for (var place = 0; place < places.Count; place++)
        {
            var at = places[place];
            var (entry, alone) = memory.Alone($"{name}|{at}", () => gate.Alone(purchase, at));
            heard.Add(alone);
            worst ??= entry;
            if (entry is null)
                may.Add(place);
            else if (entry.Verdict == Verdict.Unknown)
                unknown.Add(place);
        }

        if (may.Count > 0)
            found.Add(purchase with { Places = may, Heard = heard });
        if (unknown.Count > 0)
            NotKnown.Add(purchase with { Places = unknown, Heard = heard });
        if (may.Count == 0)
            SetAside.Add(new("not considered", name, cost.Total, worst!.Id, PlanWords.Of(worst)));
    }
}
