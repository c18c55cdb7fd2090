using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>What the survey names exists.</summary>
internal static class SurveyNameRules
{
    /// <summary>Checks the spaces, drops, pathways and models that the survey names.</summary>
    public static void Check(JobNames names, Slips slips)
    {
        var survey = names.Job.Survey;
        foreach (var space in survey.Spaces)
            Space(space.Enclosure?.Beside, $"space {space.Id}", space.At, (names, slips));
        foreach (var rack in survey.Racks)
            Space(rack.In, $"rack {rack.Id}", rack.At, (names, slips));
        foreach (var listener in survey.Listeners)
            Space(listener.In, $"listener {listener.Id}", listener.At, (names, slips));
        foreach (var drop in survey.Drops)
            Drop(drop, names, slips);
        foreach (var endpoint in survey.Endpoints)
            Endpoint(endpoint, names, slips);
        Shared(survey.Endpoints, slips);
    }

    private static void Drop(Drop drop, JobNames names, Slips slips)
    {
        Space(drop.From, $"drop {drop.Id}", drop.At, (names, slips));
        Space(drop.To, $"drop {drop.Id}", drop.At, (names, slips));
        foreach (var piece in drop.Pieces)
            Piece(piece, drop, names, slips);
        if (drop.CordAtPanel is { } panel)
            Piece(panel, drop, names, slips);
        if (drop.CordAtDevice is { } device)
            Piece(device, drop, names, slips);
    }

    private static void Piece(RunPiece piece, Drop drop, JobNames names, Slips slips)
    {
        var models = names.Catalogue;
        if (piece.Cable is { } cable && !models.Cables.ContainsKey(cable) && !models.Fibres.ContainsKey(cable))
        {
            var missing = new Missing("cable model", cable, $"drop {drop.Id}", "of the catalogue");
            slips.Unknown(RuleCodes.UnknownCable, drop.At, missing, names.CableModels);
        }

        if (piece.By is { } by && !names.Pathways.ContainsKey(by))
            slips.Unknown(RuleCodes.UnknownPathway, drop.At, new("pathway", by, $"drop {drop.Id}"), names.Pathways.Keys);
    }

    private static void Endpoint(Endpoint endpoint, JobNames names, Slips slips)
    {
        var of = $"endpoint {endpoint.Id}";
        Space(endpoint.Near, of, endpoint.At, (names, slips));
        if (endpoint.Drop is { } drop && !names.Drops.ContainsKey(drop))
            slips.Unknown(RuleCodes.UnknownDrop, endpoint.At, new("drop", drop, of), names.Drops.Keys);
        if (!names.Catalogue.Endpoints.ContainsKey(endpoint.Model))
        {
            var missing = new Missing("endpoint model", endpoint.Model, of, "of the catalogue");
            slips.Unknown(RuleCodes.UnknownEndpointModel, endpoint.At, missing, names.Catalogue.Endpoints.Keys);
        }
    }

    private static void Space(string? id, string of, Place at, (JobNames Names, Slips Slips) to)
    {
        if (id is null || to.Names.Spaces.ContainsKey(id))
            return;
        if (to.Names.Racks.TryGetValue(id, out var rack))
        {
            var said = new Said($"{of} names the rack '{id}' for a space", "a space of the job belongs there", $"Write the space it stands in: '{rack.In}'.");
            to.Slips.Add(RuleCodes.UnknownSpace, at, said, id);
            return;
        }

        to.Slips.Unknown(RuleCodes.UnknownSpace, at, new("space", id, of), to.Names.Spaces.Keys);
    }

    private static void Shared(IReadOnlyList<Endpoint> endpoints, Slips slips)
    {
        var hangsThere = new Dictionary<string, string>();
        foreach (var endpoint in endpoints)
        {
            if (endpoint.Drop is not { } drop || hangsThere.TryAdd(drop, endpoint.Id))
                continue;
            var said = new Said(
                $"endpoint {endpoint.Id} hangs on drop {drop}, and so does endpoint {hangsThere[drop]}",
                "one endpoint hangs on a drop",
                "Give one of them another drop, or write what is behind the other without a drop.");
            slips.Add(RuleCodes.DropShared, endpoint.At, said);
        }
    }
}
