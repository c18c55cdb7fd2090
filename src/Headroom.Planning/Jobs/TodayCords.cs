using Headroom.Domain.Jobs;

namespace Headroom.Planning.Jobs;

/// <summary>Which cords can stay where they are today: those of a switch of the same model in the same place, each on its own port.</summary>
internal sealed class TodayCords(Design? today, Survey survey)
{
    private readonly HashSet<string> _taken = [];

    /// <summary>The cords of the next switch of today like one that is bought; none when there is no such switch, or no longer one.</summary>
    public UnitCords For(Purchase purchase, string? place)
    {
        var unit = today?.Switches.FirstOrDefault(unit => unit.Model == purchase.Model.Id && SpaceOf(unit.Standing.In) == place && !_taken.Contains(unit.Id));
        if (unit is null)
            return new([], StaysElsewhere);
        _taken.Add(unit.Id);
        return new(today!.Patch.Where(patch => patch.To.Unit == unit.Id && patch.To.Port is not null).GroupBy(patch => patch.What).ToDictionary(group => group.Key, group => group.First().To.Port!.Value), StaysElsewhere);
    }

    // On a switch of today that none of those so far stands for: it may stay there yet.
    private bool StaysElsewhere(string what) => today?.Patch.Any(patch => patch.What == what && !_taken.Contains(patch.To.Unit)) == true;

    private string? SpaceOf(string? at) => survey.Racks.FirstOrDefault(rack => rack.Id == at)?.In ?? at;

    /// <summary>What is on which port of a switch of today.</summary>
    internal sealed class UnitCords(Dictionary<string, int> ports, Func<string, bool> staysElsewhere)
    {
        /// <summary>The next endpoint and its port: one that stays, else one that stays nowhere, on the first free port that nobody has today.</summary>
        public (Endpoint Endpoint, int Port) Next(List<Endpoint> waiting, List<int> free)
        {
            foreach (var endpoint in waiting)
            {
                if (ports.TryGetValue(endpoint.Drop ?? endpoint.Id, out var own) && free.Contains(own))
                    return (endpoint, own);
            }

            return (
                waiting.Find(endpoint => !staysElsewhere(endpoint.Drop ?? endpoint.Id)) ?? waiting[0],
                free.Exists(port => !ports.ContainsValue(port)) ? free.Find(port => !ports.ContainsValue(port)) : free[0]);
        }
    }
}
