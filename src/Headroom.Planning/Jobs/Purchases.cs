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
        var asked = Asked();
        foreach (var model in catalogue.Switches.Values.OrderBy(model => model.Id, StringComparer.Ordinal))
        {
            if (!Allowed(model))
                continue;
            foreach (var supply in model.Supplies.Count > 0 ? model.Supplies : [null!])
            {
                foreach (var owned in request.Pins.Owned.ContainsKey(model.Id) ? new[] { true, false } : [false])
                    Add(model, supply, (owned, null), places, found);
                foreach (var midspans in request.Pins.Fanless ? [] : Midspans.Beside(model, catalogue, asked))
                    Add(model, supply, (false, midspans), places, found);
            }
        }

        return found;
    }

    /// <summary>What people call a switch with a supply.</summary>
    public static string NameOf(SwitchModel model, SupplyModel? supply, bool owned) =>
        (supply is null || model.Supplies.Count < 2 ? model.Id : $"{model.Id}, supply {supply.Id}") + (owned ? ", owned" : "");

    private PlanCost? Cost(SwitchModel model, SupplyModel? supply, (bool Owned, Midspans? Midspans) how)
    {
        if (_prices.Of(model, supply, how.Owned) is not { } cost || how.Midspans is not { } midspans)
            return _prices.Of(model, supply, how.Owned);
        return _prices.Of(midspans.Model) is { } each ? Enumerable.Repeat(each, midspans.Count).Aggregate(cost, DesignCost.Sum) : null;
    }

    private bool Allowed(SwitchModel model)
    {
        var pins = request.Pins;
        if (pins.Models.Count > 0 && !pins.Models.Contains(model.Id))
            return false;
        return !pins.Fanless || model.Sound?.Fans == 0;
    }

    // How many ask for power by their class, and how many take a voltage that asks nobody.
    private (int ByClass, int Passive) Asked()
    {
        var powered = job.Survey.Endpoints.Select(endpoint => catalogue.Endpoints[endpoint.Model].Power).OfType<PowerIntake>().ToList();
        return (powered.Count(power => power.Class is not null), powered.Count(power => power.Class is null));
    }

    private void Add(SwitchModel model, SupplyModel? supply, (bool Owned, Midspans? Midspans) how, IReadOnlyList<string?> places, List<Purchase> found)
    {
        var (owned, midspans) = how;
        var name = NameOf(model, supply, owned) + (midspans is null ? "" : $" + {midspans.Name}");
        if (Cost(model, supply, how) is not { } cost)
        {
            if (midspans is null)
                SetAside.Add(new("not considered", name, null, null, "its price is not known"));
            return;
        }

        var purchase = new Purchase(name, model, supply, cost, owned, []) { Midspans = midspans };
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
        // What stands in the way of the switch alone is told of it already.
        if (may.Count == 0 && midspans is null)
            SetAside.Add(new("not considered", name, cost.Total, worst!.Id, PlanWords.Of(worst)));
    }
}
