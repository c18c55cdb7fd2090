using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering;

namespace Headroom.Planning.Tests.Jobs;

// Tries one and two switches, each with none to two midspans of one model beside it, and every way of sharing the endpoints out by count; the study judges.
internal static class EverySetWithMidspans
{
    public static (decimal Cost, string Told)? Least(Job job, Catalogue catalogue, DateOnly on)
    {
        var units = catalogue.Switches.Values.SelectMany(model => model.Supplies.SelectMany(supply => Beside(model, catalogue).Select(beside => new Unit(model, supply, beside)))).ToList();
        var sets = units.Select(unit => new[] { unit }).Concat(from one in units from two in units select new[] { one, two });
        return sets.Select(set => (set, cost: set.Sum(unit => unit.Cost))).OrderBy(at => at.cost)
            .SelectMany(at => Designs(at.set, job, catalogue).Where(design => Kept(job, catalogue, design, on)).Select(design => ((decimal, string)?)(at.cost, string.Join(" + ", at.set.Select(unit => unit.Told)))))
            .FirstOrDefault();
    }

    private static IEnumerable<InjectorModel[]> Beside(SwitchModel model, Catalogue catalogue) =>
        [[], .. model.Ports.Any(group => group.Poe is not null) ? [] : catalogue.Injectors.Values.SelectMany(one => new InjectorModel[][] { [one], [one, one] })];

    private static IEnumerable<Design> Designs(Unit[] set, Job job, Catalogue catalogue)
    {
        var kinds = job.Survey.Endpoints.GroupBy(endpoint => endpoint.Model).Select(group => group.ToList()).ToList();
        foreach (var counts in Counts(kinds, 0, set.Length))
        {
            // Of two midspans either takes its share first: what is put where is tried from both ends.
            foreach (var turned in set.Any(unit => unit.Beside.Length > 1) ? new[] { false, true } : [false])
            {
                if (Design(set, (kinds, counts, turned), catalogue) is { } design)
                    yield return design;
            }
        }
    }

    private static IEnumerable<int[]> Counts(List<List<Endpoint>> kinds, int at, int boxes) => at == kinds.Count ? [[]]
        : from count in Enumerable.Range(0, kinds[at].Count + 1).Where(count => boxes > 1 || count == kinds[at].Count)
          from rest in Counts(kinds, at + 1, boxes)
          select (int[])[count, .. rest];

    private static Design? Design(Unit[] set, (List<List<Endpoint>> Kinds, int[] First, bool Turned) of, Catalogue catalogue)
    {
        var (patch, injectors) = (new List<Patch>(), new List<PlacedInjector>());
        for (var box = 0; box < set.Length; box++)
        {
            var here = of.Kinds.SelectMany((kind, i) => box == 0 ? kind.Take(of.First[i]) : kind.Skip(of.First[i])).ToList();
            if (!Fill(set[box], box, here, of.Turned, catalogue, (patch, injectors)))
                return null;
            var links = set.Length == 1 || box > 0 ? 1 : 2;
            if (set[box].Model.Ports.Sum(group => group.Last - group.First + 1) - here.Count < links)
                return null;
        }

        var switches = set.Select((unit, i) => new PlacedSwitch($"u{i}", unit.Model.Id, unit.Supply.Id, new Standing(null, null, null), null, null, PowerSetting.Silent, null, Place.None)).ToList();
        return new Design("tried", null, switches, injectors, [], null, patch, [], Place.None);
    }

    private static bool Fill(Unit unit, int box, List<Endpoint> here, bool turned, Catalogue catalogue, (List<Patch> Patch, List<PlacedInjector> Injectors) to)
    {
        var free = unit.Model.Ports.Where(group => group.Media == "copper").SelectMany(group => Enumerable.Range(group.First, group.Last - group.First + 1).Select(port => (Port: port, group.Poe))).ToList();
        var from = unit.Beside.Select(_ => new List<PortRef>()).ToList();
        var powered = here.Where(endpoint => catalogue.Endpoints[endpoint.Model].Power is not null).ToList();
        if (turned)
            powered.Reverse();
        for (var i = 0; i < powered.Count; i++)
        {
            // By turns where there are two.
            var midspan = unit.Beside.Length == 0 ? -1 : i % unit.Beside.Length;
            var at = unit.Beside.Length > 0 ? 0 : free.FindIndex(port => port.Poe is { } type && (type != PoeType.Type1 || catalogue.Endpoints[powered[i].Model].Power!.Class < 4));
            if (at < 0 || free.Count == 0 || (midspan >= 0 && from[midspan].Count >= unit.Beside[midspan].Ports))
                return false;
            if (midspan >= 0)
                from[midspan].Add(new PortRef($"u{box}", free[at].Port));
            to.Patch.Add(new Patch(powered[i].Id, midspan >= 0 ? new PortRef($"u{box}m{midspan}", from[midspan].Count) : new PortRef($"u{box}", free[at].Port), Place.None));
            free.RemoveAt(at);
        }

        foreach (var endpoint in here.Except(powered))
        {
            if (free.Count == 0)
                return false;
            to.Patch.Add(new Patch(endpoint.Id, new PortRef($"u{box}", free[^1].Port), Place.None));
            free.RemoveAt(free.Count - 1);
        }

        to.Injectors.AddRange(unit.Beside.Select((model, i) => new PlacedInjector($"u{box}m{i}", model.Id, new Standing(null, null, null), null, from[i], Place.None)));
        return true;
    }

    private static bool Kept(Job job, Catalogue catalogue, Design design, DateOnly on) => Study
        .Run(job with { Designs = [design], Chosen = null }, catalogue, new StudyRequest("tried", on, [], ["power", "standby"]))
        .Entries.All(entry => entry.Verdict is Verdict.Clear or Verdict.Unknown);

    private sealed record Unit(SwitchModel Model, SupplyModel Supply, InjectorModel[] Beside)
    {
        public decimal Cost => Model.Body.Price!.Value.Amount + (Supply.Price?.Value.Amount ?? 0) + Beside.Sum(one => one.Body.Price!.Value.Amount);

        public string Told => string.Join(" + ", Beside.Select(one => one.Id).Prepend(Model.Id));
    }
}
