using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>What a design changes of the building is there, and what it puts in its place exists.</summary>
internal static class BuildingRules
{
    /// <summary>Checks what a whole design changes.</summary>
    public static void Check(BuildingChange building, (Design Design, JobNames Names) of, Slips slips)
    {
        var names = of.Names;
        var survey = names.Job.Survey;
        var where = $"'building' of design {of.Design.Id}";
        foreach (var change in building.Drops)
        {
            Known(("drop", change.Id, change.At), names.Drops.Keys, where, slips);
            Drop(change, names, slips);
        }

        foreach (var change in building.Pathways)
            Known(("pathway", change.Id, change.At), names.Pathways.Keys, where, slips);
        foreach (var change in building.Spaces)
            Known(("space", change.Id, change.At), names.Spaces.Keys, where, slips);
        foreach (var change in building.Partitions)
            Known(("partition", change.Id, change.At), [.. survey.Partitions.Select(wall => wall.Id)], where, slips);
        foreach (var change in building.Racks)
            Rack(change, where, names, slips);
        foreach (var change in building.Lines)
            Known(("line", change.Id, change.At), [.. survey.Lines.Select(line => line.Id)], where, slips);
        foreach (var change in building.Endpoints)
        {
            Known(("endpoint", change.Id, change.At), names.Endpoints.Keys, where, slips);
            if (change.Model is { } model && !names.Catalogue.Endpoints.ContainsKey(model))
                slips.Unknown(RuleCodes.UnknownEndpointModel, change.At, new("endpoint model", model, $"endpoint {change.Id}", "of the catalogue"), names.Catalogue.Endpoints.Keys);
        }
    }

    private static void Drop(DropChange change, JobNames names, Slips slips)
    {
        var pieces = new[] { change.CordAtPanel, change.CordAtDevice }.OfType<RunPiece>().Concat(change.Pieces ?? []).ToList();
        foreach (var cable in pieces.Select(piece => piece.Cable).Append(change.Cable).OfType<string>())
        {
            if (!names.Catalogue.Cables.ContainsKey(cable) && !names.Catalogue.Fibres.ContainsKey(cable))
                slips.Unknown(RuleCodes.UnknownCable, change.At, new("cable model", cable, $"drop {change.Id}", "of the catalogue"), names.CableModels);
        }

        foreach (var by in pieces.Select(piece => piece.By).OfType<string>())
        {
            if (!names.Pathways.ContainsKey(by))
                slips.Unknown(RuleCodes.UnknownPathway, change.At, new("pathway", by, $"drop {change.Id}"), names.Pathways.Keys);
        }
    }

    private static void Rack(RackChange change, string where, JobNames names, Slips slips)
    {
        Known(("rack", change.Id, change.At), names.Racks.Keys, where, slips);
        if (change.Cabinet is { } cabinet && !names.Catalogue.Cabinets.ContainsKey(cabinet))
            slips.Unknown(RuleCodes.UnknownCabinet, change.At, new("cabinet model", cabinet, $"rack {change.Id}", "of the catalogue"), names.Catalogue.Cabinets.Keys);
    }

    private static void Known((string Kind, string Id, Place At) change, IReadOnlyCollection<string> known, string where, Slips slips)
    {
        if (!known.Contains(change.Id))
            slips.Unknown(RuleCodes.UnknownChanged, change.At, new(change.Kind, change.Id, where), known);
    }
}
