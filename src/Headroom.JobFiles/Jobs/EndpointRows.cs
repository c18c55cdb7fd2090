using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Makes one endpoint of each name and of each one counted.</summary>
/// <param name="reader">Takes the findings.</param>
internal sealed class EndpointRows(FieldReader reader)
{
    private readonly List<Endpoint> _endpoints = [];
    private readonly Dictionary<string, Place> _places = [];
    private readonly Dictionary<string, int> _counted = [];

    /// <summary>The endpoints, in the order written.</summary>
    public static IReadOnlyList<Endpoint> Read(IReadOnlyList<Entry<EndpointKey, EndpointDraft>>? entries, FieldReader reader)
    {
        var rows = new EndpointRows(reader);
        foreach (var entry in entries ?? [])
            rows.Add(entry.Key, entry.Value, entry.At);
        return rows._endpoints;
    }

    private void Add(EndpointKey key, EndpointDraft draft, Place at)
    {
        if (ModelOf(key, draft, at) is not { } model)
        {
            reader.LeaveOut();
            return;
        }

        var names = key.Count > 0 ? Counted(model, key.Count) : key.Names;
        if (draft.Drops.Count > 0 && draft.Drops.Count != names.Count)
            RefuseSteps(key, names.Count, draft.Drops.Count, at);
        for (var i = 0; i < names.Count; i++)
        {
            if (Named.First(names[i], at, _places, reader))
                _endpoints.Add(Make(names[i], model, draft, (draft.Drops.ElementAtOrDefault(i), key, at)));
        }
    }

    private static Endpoint Make(string name, string model, EndpointDraft draft, (string? Drop, EndpointKey Key, Place At) own) => new(
        name, model, own.Drop, draft.Near, draft.Mode, draft.Draws, own.Key.Count > 0 ? own.Key.Written : null, draft.Hardware, own.At)
    {
        Traffic = draft.Traffic,
        Recorder = draft.Recorder,
    };

    // Two lines that count the same model go on counting: phone-1 to phone-12, then phone-13.
    private List<string> Counted(string model, int count)
    {
        var before = _counted.GetValueOrDefault(model);
        _counted[model] = before + count;
        var names = new List<string>(count);
        for (var number = before + 1; number <= before + count; number++)
            names.Add($"{model}-{number}");
        return names;
    }

    private string? ModelOf(EndpointKey key, EndpointDraft draft, Place at)
    {
        if (key.Model is not null && draft.Model is not null)
        {
            reader.Refuse(Slips.Excluding, at, $"endpoint {Words.Short(key.Written)} has a model in its key and another behind it", "one of the two", "take the one behind it out");
            return null;
        }

        if (key.Model is null && draft.Model is null)
            reader.Refuse(Slips.Missing, at, $"model of endpoint {Words.Short(key.Written)} is not written", "the name of an endpoint model", "write 'model: phone'");
        return key.Model ?? draft.Model;
    }

    private void RefuseSteps(EndpointKey key, int endpoints, int drops, Place at) => reader.Refuse(
        JobSlips.OutOfStep,
        at,
        $"endpoint {Words.Short(key.Written)} stands for {endpoints} and its drop for {drops}",
        "as many drops as endpoints",
        "make the ranges equally long, or write the endpoints one by one");
}
