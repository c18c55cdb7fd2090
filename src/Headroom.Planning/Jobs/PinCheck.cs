using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering;

namespace Headroom.Planning.Jobs;

/// <summary>Sees whether what was pinned is there, and whether pins contradict one another.</summary>
internal static class PinCheck
{
    /// <summary>All that is wrong, each in words.</summary>
    public static List<string> Of(Job job, Catalogue catalogue, PlanRequest request)
    {
        var pins = request.Pins;
        var complaints = new List<string>();
        if (job.Survey.Endpoints.Count == 0)
            complaints.Add("the job has no endpoints; write what is to be connected below 'endpoints:', if only as counts: '14 x phone:'");
        if (request.Today is { } today && job.Designs.All(design => design.Id != today))
            complaints.Add($"the job has no design '{today}'{Near(today, job.Designs.Select(design => design.Id))}");
        foreach (var space in pins.NotIn.Where(id => job.Survey.Spaces.All(space => space.Id != id)))
            complaints.Add($"there is no space '{space}' to keep free{Near(space, job.Survey.Spaces.Select(one => one.Id))}");
        foreach (var model in pins.Models.Concat(pins.Owned.Keys).Distinct().Where(id => !catalogue.Switches.ContainsKey(id)))
            complaints.Add($"the catalogue has no switch model '{model}'{Near(model, catalogue.Switches.Keys)}");
        complaints.AddRange(Kept(job, catalogue, request));
        complaints.AddRange(Against(job, catalogue, pins));
        complaints.AddRange(Ends(job, pins));
        return complaints;
    }

    private static IEnumerable<string> Kept(Job job, Catalogue catalogue, PlanRequest request)
    {
        if (request.Pins.Keep.Count == 0)
            yield break;
        var design = Study.DesignOf(job, request.Today);
        foreach (var id in request.Pins.Keep)
        {
            var unit = design?.Switches.FirstOrDefault(unit => unit.Id == id);
            if (unit is null)
                yield return $"there is no switch '{id}' to keep in {(design is null ? "the job, which has no design" : $"design {design.Id}")}";
            else if (request.Pins.Models.Count > 0 && !request.Pins.Models.Contains(unit.Model!))
                yield return $"{id} is to stay and is a {unit.Model}, but only {string.Join(", ", request.Pins.Models)} may be used: give up one of the two";
            else if (request.Pins.Fanless && catalogue.Switches[unit.Model!].Sound?.Fans != 0)
                yield return $"{id} is to stay and is a {unit.Model}, which has a fan or of which it is not known, but nothing with a fan may be used: give up one of the two";
            else if (SpaceOf(job, unit.Standing.In) is { } space && request.Pins.NotIn.Contains(space))
                yield return $"{id} is to stay and stands in {space}, where nothing may stand: give up one of the two";
        }
    }

    // Pins that leave nothing to choose from, or that one another makes empty.
    private static IEnumerable<string> Against(Job job, Catalogue catalogue, PlanPins pins)
    {
        var fans = pins.Models.Where(id => catalogue.Switches.TryGetValue(id, out var model) && model.Sound?.Fans != 0).ToList();
        if (pins.Fanless && pins.Models.Count > 0 && fans.Count == pins.Models.Count)
            yield return $"only {string.Join(", ", pins.Models)} may be used, but {(fans.Count == 1 ? "it has a fan or it is not known whether it has" : "each of them has a fan or it is not known whether it has")}, and nothing with a fan may be used: give up one of the two";
        foreach (var owned in pins.Owned.Keys.Where(id => pins.Models.Count > 0 && !pins.Models.Contains(id) && catalogue.Switches.ContainsKey(id)))
            yield return $"the client has a {owned}, but only {string.Join(", ", pins.Models)} may be used: name it too, or leave it out";
        if (job.Survey.Spaces.Count > 0 && job.Survey.Spaces.All(space => pins.NotIn.Contains(space.Id)))
            yield return $"nothing may stand in any of the {job.Survey.Spaces.Count} spaces of the job: allow one";
    }

    private static IEnumerable<string> Ends(Job job, PlanPins pins)
    {
        var used = job.Survey.Endpoints.Select(endpoint => endpoint.Drop).ToHashSet();
        foreach (var space in job.Survey.Drops.Where(drop => used.Contains(drop.Id)).GroupBy(drop => drop.From).Where(group => pins.NotIn.Contains(group.Key)))
            yield return $"nothing may stand in {space.Key}, but the cables of {space.Count()} endpoints end there ({string.Join(", ", space.Take(3).Select(drop => drop.Id))}{(space.Count() > 3 ? " ..." : "")}): lead them elsewhere, or allow it";
    }

    private static string? SpaceOf(Job job, string? at) => job.Survey.Racks.FirstOrDefault(rack => rack.Id == at)?.In ?? at;

    private static string Near(string word, IEnumerable<string> known) => Spelling.Nearest(word, known) is { } near ? $"; did you mean {near}?" : "";
}
