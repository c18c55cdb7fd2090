using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>Finds out whose pictures each recorder keeps.</summary>
internal static class RecorderFinder
{
    /// <summary>The recorders of a design, and the recorder of each endpoint that has one.</summary>
    public static (IReadOnlyList<RecorderTraffic> Recorders, IReadOnlyDictionary<string, BoundEndpoint> By) Of(BoundDesign bound)
    {
        var by = new Dictionary<string, BoundEndpoint>();
        var recorders = bound.Endpoints.Where(endpoint => endpoint.Endpoint.Recorder is not null).ToList();
        if (recorders.Count == 0)
            return ([], by);
        foreach (var recorder in recorders)
        {
            foreach (var name in recorder.Endpoint.Recorder!.Records)
                by.TryAdd(name, recorder);
        }

        // One that names nobody takes all that send pictures and that no other names.
        if (recorders.FirstOrDefault(one => one.Endpoint.Recorder!.Records.Count == 0) is { } rest)
        {
            foreach (var endpoint in bound.Endpoints)
            {
                if (TrafficStudy.FiguresOf(endpoint)?.Stream is not null || endpoint.Model.Kind == "camera")
                    by.TryAdd(endpoint.Id, rest);
            }
        }

        return ([.. recorders.Select(one => new RecorderTraffic(one, one.Endpoint.Recorder!, [.. bound.Endpoints.Where(e => by.GetValueOrDefault(e.Id) == one)]))], by);
    }
}
