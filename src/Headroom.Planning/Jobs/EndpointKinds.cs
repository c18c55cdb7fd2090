using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Planning.Jobs;

/// <summary>Counts together what is alike, and adds what is to grow.</summary>
internal static class EndpointKinds
{
    /// <summary>The kinds of a job.</summary>
    public static List<EndpointKind> Of(Job job, Catalogue catalogue, IReadOnlyList<string?> places, bool withGrowth)
    {
        var drops = job.Survey.Drops.ToDictionary(drop => drop.Id);
        var kinds = job.Survey.Endpoints
            .GroupBy(endpoint => KeyOf(endpoint, drops))
            .Select(group => Kind([.. group], drops, catalogue, places))
            .ToList();
        if (withGrowth)
            kinds.AddRange(Growth(job.Policy, kinds, places.Count));
        return kinds;
    }

    /// <summary>The drops of those that kinds are planned by.</summary>
    public static List<Drop> Drops(Job job, IReadOnlyList<EndpointKind> kinds)
    {
        var worst = kinds.Select(kind => kind.Worst.Drop).ToHashSet();
        return [.. job.Survey.Drops.Where(drop => worst.Contains(drop.Id))];
    }

    private static string KeyOf(Endpoint endpoint, Dictionary<string, Drop> drops)
    {
        var drop = endpoint.Drop is { } id ? drops.GetValueOrDefault(id) : null;
        var draws = string.Join(',', endpoint.Draws.OrderBy(draw => draw.Key, StringComparer.Ordinal).Select(draw => $"{draw.Key}={draw.Value.Value.Value}"));
        return $"{endpoint.Model}|{endpoint.Mode}|{draws}|{drop?.From ?? "-"}|{drop is not null && Length(drop) is null}|{drop?.Pieces.Any(piece => piece.Cable is not null)}";
    }

    private static EndpointKind Kind(List<Endpoint> members, Dictionary<string, Drop> drops, Catalogue catalogue, IReadOnlyList<string?> places)
    {
        var worst = members.MaxBy(endpoint => endpoint.Drop is { } id && drops.TryGetValue(id, out var drop) ? Length(drop) ?? 0 : 0)!;
        var from = worst.Drop is { } at && drops.TryGetValue(at, out var run) ? run.From : null;
        var reach = from is null ? Enumerable.Range(0, places.Count) : Enumerable.Range(0, places.Count).Where(place => places[place] == from);
        var model = catalogue.Endpoints[worst.Model];
        var name = members.Count == 1 ? worst.Id : $"{members.Count} x {worst.Model}";
        return new(name, worst, model, members, members.Count, [.. reach]);
    }

    private static double? Length(Drop drop)
    {
        var sum = 0.0;
        foreach (var piece in drop.Pieces)
        {
            if (piece.Length is not { } length)
                return null;
            sum += length.Value.Value;
        }

        return drop.Pieces.Count == 0 ? null : sum;
    }

    // What is to be added is planned as more of what there is most of.
    private static IEnumerable<EndpointKind> Growth(Policy policy, List<EndpointKind> kinds, int places)
    {
        var powered = kinds.Where(kind => kind.TakesPower).ToList();
        var more = Count(policy, "powered ports", powered.Sum(kind => kind.Count));
        var all = Math.Max(0, Count(policy, "all ports", kinds.Sum(kind => kind.Count)) - more);
        if (more > 0 && powered.Where(kind => kind.Model.Power!.Class is not null).MaxBy(kind => kind.Count) is { } most)
            yield return most with { Id = "growth, powered", Members = [], Count = more, Places = [.. Enumerable.Range(0, places)] };
        if (all > 0 && kinds.Count > 0)
        {
            var plain = kinds[0].Model with { Power = null };
            yield return kinds[0] with { Id = "growth, plain", Model = plain, Members = [], Count = all, Places = [.. Enumerable.Range(0, places)] };
        }
    }

    private static int Count(Policy policy, string kind, int now) =>
        policy.Growth.TryGetValue(kind, out var growth) ? (int)Math.Ceiling((growth.Amount ?? growth.Share!.Value * now) - 1e-9) : 0;
}
