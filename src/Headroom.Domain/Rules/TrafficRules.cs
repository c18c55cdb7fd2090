using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>Recorders, lines and the fleet name what exists, and their parts are no more than the whole.</summary>
internal static class TrafficRules
{
    /// <summary>Checks recorders and the fleet.</summary>
    public static void Check(JobNames names, Slips slips)
    {
        foreach (var endpoint in names.Job.Survey.Endpoints)
        {
            if (endpoint.Recorder is { } recorder)
                Recorder(endpoint.Id, recorder, names, slips);
        }

        foreach (var row in names.Job.Fleet)
            Fleet(row, slips);
    }

    /// <summary>Asks about lines and models of the fleet that nothing else knows.</summary>
    public static void Ask(JobNames names, IReadOnlyList<DesignView> views, Slips slips)
    {
        var lines = names.Job.Survey.Lines;
        if (lines.Count > 0)
        {
            foreach (var view in views)
                Lines(view, lines, slips);
        }

        if (names.Job.Fleet.Count == 0)
            return;
        var known = PriceRules.Models(names.Catalogue);
        foreach (var row in names.Job.Fleet)
        {
            if (!known.Contains(row.Model))
                slips.Unknown(RuleCodes.UnknownFleet, row.At, new("model", row.Model, "the fleet", "of the catalogue"), known);
        }
    }

    private static void Lines(DesignView view, IReadOnlyList<Line> lines, Slips slips)
    {
        foreach (var link in view.Uplinks)
        {
            if (!view.Switches.ContainsKey(link.To.Unit) && lines.All(line => line.Id != link.To.Unit))
                slips.Unknown(RuleCodes.UnknownLine, link.At, new("line", link.To.Unit, $"the uplink from {link.From}"), [.. lines.Select(line => line.Id)]);
        }
    }

    private static void Recorder(string id, Recorder recorder, JobNames names, Slips slips)
    {
        foreach (var name in recorder.Records)
        {
            if (!names.Endpoints.ContainsKey(name))
                slips.Unknown(RuleCodes.UnknownRecorded, recorder.At, new("endpoint", name, $"the recorder {id}"), names.Endpoints.Keys);
        }

        if (recorder is { Disks: { } disks, Parity: { } parity } && parity >= disks)
        {
            var said = new Said($"the recorder {id} has {disks} disks, {parity} of them for parity", "at least one disk more than there are for parity", "Correct one of the two.");
            slips.Add(RuleCodes.ParityTakesAll, recorder.At, said);
        }
    }

    private static void Fleet(FleetRow row, Slips slips)
    {
        if (row.HotService is { } hot && row.Service is { } all && hot.Value.Value > all.Value.Value)
            Hot(row, ("service", hot.Written, all.Written), slips);
        if (row.HotFailed is { } failed && row.Failed is { } of && failed > of)
            Hot(row, ("failed", $"{failed}", $"{of}"), slips);
    }

    private static void Hot(FleetRow row, (string What, string Hot, string All) said, Slips slips) => slips.Add(
        RuleCodes.HotBeyondAll,
        row.At,
        new($"'hot {said.What}' of {row.Model} is {said.Hot}, '{said.What}' is {said.All}", $"at most what is said of all places together", "Count those in hot places among all of them."));
}
