using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering;

namespace Headroom.Planning.Tests.Jobs;

// Tries one and two switches of every model, supply and way of reserving with every way of sharing the endpoints out by count; the study judges.
internal static class EverySet
{
    public static (decimal Cost, string Told)? Least(Job job, Catalogue catalogue, DateOnly on)
    {
        var units = catalogue.Switches.Values.SelectMany(model => model.Supplies.SelectMany(supply => Ways(model).Select(by => (model, supply, by)))).ToList();
        var sets = units.Select(unit => new[] { unit }).Concat(from one in units from two in units select new[] { one, two });
        return sets.Select(set => (set, cost: set.Sum(unit => unit.model.Body.Price!.Value.Amount + (unit.supply.Price?.Value.Amount ?? 0))))
            .OrderBy(at => at.cost)
            .SelectMany(at => Shares(at.set, job, catalogue).Where(design => Kept(job, catalogue, design, on)).Select(design => ((decimal, string)?)(at.cost, Told(design))))
            .FirstOrDefault();
    }

    private static string Told(Design design) =>
        $"{string.Join(" + ", design.Switches.Select(unit => $"{unit.Model} {unit.Supply} {unit.Setting.ReservesBy}"))}: {string.Join(' ', design.Patch.Select(cord => $"{cord.What}-{cord.To}"))}";

    private static IEnumerable<ReservesBy?> Ways(SwitchModel model) =>
        [null, .. model.SettingsOffered.Where(by => by != ReservesBy.PortLimit).Select(by => (ReservesBy?)by)];

    private static IEnumerable<Design> Shares((SwitchModel Model, SupplyModel Supply, ReservesBy? By)[] set, Job job, Catalogue catalogue)
    {
        var kinds = job.Survey.Endpoints.GroupBy(endpoint => endpoint.Model).Select(group => group.ToList()).ToList();
        foreach (var first in Counts(kinds, 0, set.Length))
        {
            if (Design(set, kinds, first, catalogue) is { } design)
                yield return design;
        }
    }

    private static IEnumerable<int[]> Counts(List<List<Endpoint>> kinds, int at, int boxes) => at == kinds.Count ? [[]]
        : from count in Enumerable.Range(0, kinds[at].Count + 1).Where(count => boxes > 1 || count == kinds[at].Count)
          from rest in Counts(kinds, at + 1, boxes)
          select (int[])[count, .. rest];

    private static Design? Design((SwitchModel Model, SupplyModel Supply, ReservesBy? By)[] set, List<List<Endpoint>> kinds, int[] first, Catalogue catalogue)
    {
        var free = set.Select(unit => unit.Model.Ports.Where(group => group.Media == "copper").SelectMany(group => Enumerable.Range(group.First, group.Last - group.First + 1).Select(port => (port, group.Poe))).ToList()).ToList();
        var all = set.Select(unit => unit.Model.Ports.Sum(group => group.Last - group.First + 1)).ToList();
        var patch = new List<Patch>();
        for (var kind = 0; kind < kinds.Count; kind++)
        {
            for (var i = 0; i < kinds[kind].Count; i++)
            {
                var box = i < first[kind] ? 0 : 1;
                var powered = catalogue.Endpoints[kinds[kind][i].Model].Power is not null;
                var at = powered ? free[box].FindIndex(port => port.Poe is not null && (port.Poe != Headroom.Domain.Catalogues.PoeType.Type1 || catalogue.Endpoints[kinds[kind][i].Model].Power!.Class < 4)) : free[box].FindLastIndex(port => true);
                if (at < 0)
                    return null;
                patch.Add(new Patch(kinds[kind][i].Id, new PortRef($"u{box}", free[box][at].port), Place.None));
                free[box].RemoveAt(at);
            }
        }

        // A link for each: the head, the first, has one to the line and one to the other.
        var links = set.Length == 1 ? new[] { 1 } : [2, 1];
        for (var box = 0; box < set.Length; box++)
        {
            if (all[box] - patch.Count(cord => cord.To.Unit == $"u{box}") < links[box])
                return null;
        }

        var switches = set.Select((unit, i) => new PlacedSwitch($"u{i}", unit.Model.Id, unit.Supply.Id, new Standing(null, null, null), null, null, PowerSetting.Silent with { ReservesBy = unit.By }, null, Place.None)).ToList();
        return new Design("tried", null, switches, [], [], null, patch, [], Place.None);
    }

    private static bool Kept(Job job, Catalogue catalogue, Design design, DateOnly on) => Study
        .Run(job with { Designs = [design], Chosen = null }, catalogue, new StudyRequest("tried", on, [], ["power", "standby"]))
        .Entries.All(entry => entry.Verdict is Verdict.Clear or Verdict.Unknown);
}
