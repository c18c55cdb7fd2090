using Headroom.Engineering.Cabling;
using Headroom.Engineering.Power;

namespace Headroom.Engineering;

/// <summary>Hands the currents that the study of power found on to the study of the cables. Looked up when somebody first asks.</summary>
internal sealed class CableLoads(PowerResult power)
{
    private Dictionary<string, CableLoad>? _byDrop;

    /// <summary>The load of a drop in the state that asks most of its port; null when it carries none or it is not known.</summary>
    public CableLoad? Of(string drop) => (_byDrop ??= Gather()).GetValueOrDefault(drop);

    private Dictionary<string, CableLoad> Gather()
    {
        var loads = new Dictionary<string, CableLoad>();
        foreach (var port in power.Ports)
        {
            if (port.Endpoint is { FromFarEnd: null, Endpoint.Drop: { } drop } && port.In(port.Worst).Point is { } point)
                loads[drop] = new CableLoad(point.Amperes / port.Pairs, 2 * port.Pairs, point.SourceWatts);
        }

        return loads;
    }
}
