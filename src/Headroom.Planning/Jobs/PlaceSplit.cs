using Headroom.Domain.Jobs;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>Where cables end in one place each, every place is packed by itself; only links and what all share bind them together.</summary>
internal static class PlaceSplit
{
    /// <summary>True when there are several places and nothing can be reached from two.</summary>
    public static bool Fits(JobPacking packing) =>
        packing.Places.Count > 1 && packing.Kinds.All(kind => kind.Count == 0 || kind.Places.Count == 1) && packing.Purchases.All(purchase => !purchase.Owned);

    /// <summary>The places that need a box.</summary>
    public static List<int> Used(JobPacking packing) =>
        [.. Enumerable.Range(0, packing.Places.Count).Where(place => packing.Line.Links[place].Must || packing.Kinds.Any(kind => kind.Count > 0 && kind.Places.Contains(place)))];

    /// <summary>The problem of one place.</summary>
    public static PackProblem ProblemOf(JobPacking packing, int place) => packing.Problem with
    {
        Kinds = [.. packing.Problem.Kinds.Select(kind => kind.Places.Contains(place) ? kind : kind with { Count = 0 })],
        Links = [.. packing.Problem.Links.Select((links, at) => at == place ? links with { Must = true } : links with { Must = false })],
        Extras = [.. packing.Problem.Extras.Where(extra => extra.Place == place)],
    };

    /// <summary>The job with what ends in one place only.</summary>
    public static Job JobOf(JobPacking packing, int place)
    {
        var here = packing.Kinds.Where(kind => kind.Places.Contains(place)).SelectMany(kind => kind.Members).Select(member => member.Id).ToHashSet();
        return packing.Job with { Survey = packing.Job.Survey with { Endpoints = [.. packing.Job.Survey.Endpoints.Where(endpoint => here.Contains(endpoint.Id))] } };
    }

    /// <summary>What tells two places apart: what ends there, what they are, and what stands in them; the same for places that come to the same.</summary>
    public static string KeyOf(JobPacking packing, int place)
    {
        var survey = packing.Job.Survey;
        var drops = survey.Drops.ToDictionary(drop => drop.Id);
        var kinds = packing.Kinds.Where(kind => kind.Places.Contains(place)).Select(kind => $"{kind.Model.Id},{kind.Worst.Mode},{kind.Count},{Runs(kind, drops)}");
        var space = survey.Spaces.FirstOrDefault(space => space.Id == packing.Places[place]);
        var room = space is null ? "" : $"{space.Size?.Value},{space.Kind},{space.Surfaces},{space.Enclosure?.Walls},{space.Enclosure?.Vents?.Value},{string.Join('/', space.Enclosure?.Exposed ?? [])},{string.Join('/', space.Temperatures.Select(at => $"{at.Key}{at.Value.Value.Value}"))}";
        var racks = survey.Racks.Where(rack => rack.In == packing.Places[place]).Select(rack => $"{rack.Height?.Value},{rack.Depth?.Value},{rack.Load?.Value},{rack.PlugsBehind?.Value},{rack.Outlets},{rack.Blanked},{survey.Fittings.Count(fitting => fitting.Standing.In == rack.Id)}");
        var listeners = survey.Listeners.Count(listener => listener.In == packing.Places[place] || listener.In == space?.Enclosure?.Beside);
        var ways = packing.Line.KeyOf(place);
        return $"{string.Join(';', kinds)}|{room}|{string.Join(';', racks)}|{packing.Line.Links[place]}|{ways}|{(listeners > 0 ? place : -1)}";
    }

    private static string Runs(EndpointKind kind, Dictionary<string, Drop> drops) => string.Join(' ', kind.Members
        .Select(member => member.Drop is { } id && drops.TryGetValue(id, out var drop) ? string.Join('+', drop.Pieces.Select(piece => $"{piece.Length?.Value.Value}{piece.Cable}{piece.Ambient?.Value.Value}")) : "-"));
}
