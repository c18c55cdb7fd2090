using Headroom.Domain.Catalogues;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>Everything the study of traffic worked out.</summary>
/// <param name="Bound">The design it was worked out for.</param>
/// <param name="Switches">The switches, those nearer to the line first.</param>
/// <param name="Ports">What every endpoint of which something is known asks of its port.</param>
/// <param name="Recorders">The recorders.</param>
public sealed record TrafficResult(
    BoundDesign Bound, IReadOnlyList<SwitchTraffic> Switches, IReadOnlyList<PortTraffic> Ports, IReadOnlyList<RecorderTraffic> Recorders)
{
    /// <summary>Works out calls and users.</summary>
    internal TrafficReckoner Reckoner { get; init; } = new(TrafficReckoner.UsualCallsLost);

    /// <summary>What figures are called: the model, or the endpoint that has its own.</summary>
    internal string NameOf(TrafficFigures figures)
    {
        _names ??= Names();
        return _names.GetValueOrDefault(figures, "device");
    }

    private Dictionary<TrafficFigures, string>? _names;

    private Dictionary<TrafficFigures, string> Names()
    {
        var names = new Dictionary<TrafficFigures, string>(ReferenceEqualityComparer.Instance);
        foreach (var endpoint in Bound.Endpoints)
        {
            if (TrafficStudy.FiguresOf(endpoint) is { } figures)
                names.TryAdd(figures, endpoint.Endpoint.Traffic is null ? endpoint.Model.Id : endpoint.Id);
        }

        return names;
    }
}
