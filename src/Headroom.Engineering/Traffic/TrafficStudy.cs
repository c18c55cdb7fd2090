using Headroom.Domain.Catalogues;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>Leads the traffic of all endpoints over the tree of switches.</summary>
public static class TrafficStudy
{
    // Mean size of a frame that carries neither speech nor a single key press [octets]: assumed, no source.
    private const double MeanFrameOctets = 500;

    /// <summary>Works out a design.</summary>
    /// <param name="bound">The bound design.</param>
    /// <returns>The result; entries are made from it by <see cref="TrafficLedger"/>.</returns>
    public static TrafficResult Of(BoundDesign bound)
    {
        var reckoner = new TrafficReckoner(bound.Job.Policy.CallsLost?.Value.Value ?? TrafficReckoner.UsualCallsLost);
        var (recorders, recordedBy) = RecorderFinder.Of(bound);
        var network = bound.Network;
        var switches = new SwitchTraffic[network.Nodes.Count];
        for (var i = 0; i < switches.Length; i++)
            switches[i] = new SwitchTraffic(network.Nodes[i]);
        var ports = new List<PortTraffic>();
        foreach (var endpoint in bound.Endpoints)
        {
            var figures = FiguresOf(endpoint);
            var recorder = endpoint.Endpoint.Recorder is null ? null : recorders.FirstOrDefault(one => ReferenceEquals(one.Endpoint, endpoint));
            if (figures is not null || recorder is not null || endpoint.Model.Radio is not null)
                ports.Add(Port(endpoint, figures, recorder, reckoner));
            if (network.Of(endpoint) is not { } node)
                continue;
            switches[node.Index].Own.Add(recorder is null ? figures : figures ?? Nothing);
            switches[node.Index].OwnStreams += recorder?.BitsPerSecond ?? 0;
            if (figures?.Stream is { } stream)
                Lead(stream.Value.Value, node, recordedBy.GetValueOrDefault(endpoint.Id), (bound, switches));
        }

        Sum(switches, reckoner);
        return new TrafficResult(bound, switches, ports, recorders) { Reckoner = reckoner };
    }

    /// <summary>What an endpoint asks: its own figures, else those of its model.</summary>
    /// <param name="endpoint">The endpoint.</param>
    /// <returns>The figures; null when nothing is known.</returns>
    public static TrafficFigures? FiguresOf(BoundEndpoint endpoint) => endpoint.Endpoint.Traffic ?? endpoint.Model.Traffic;

    // A recorder asks nothing by itself: it takes what cameras send.
    private static readonly TrafficFigures Nothing = new(null, null, null, null, null, null, Domain.Findings.Place.None);

    private static PortTraffic Port(BoundEndpoint endpoint, TrafficFigures? figures, RecorderTraffic? recorder, TrafficReckoner reckoner)
    {
        double? rate = null;
        if (endpoint.Port is { Switch: { } unit } on)
            rate = LinkRate.Common(unit.PortGroupOf(on.Port)?.Speeds ?? [], endpoint.Model.Speeds);
        else if (endpoint.Port is { Injector: { } injector })
            rate = Slower(LinkRate.Fastest(endpoint.Model.Speeds), injector.Model.Speed?.Value.Value);
        TrafficDemand? demand = figures is not null || recorder is not null ? reckoner.Of(figures ?? Nothing, recorder?.BitsPerSecond ?? 0) : null;
        return new(endpoint, demand, rate);
    }

    private static double? Slower(double? one, double? other) => one is { } a && other is { } b ? Math.Min(a, b) : one ?? other;

    // From the switch of the camera to that of its recorder, over the one they have in common; without a recorder to the root.
    private static void Lead(double rate, NetworkNode from, BoundEndpoint? recorder, (BoundDesign Bound, SwitchTraffic[] Switches) on)
    {
        on.Switches[from.Index].OwnStreams += rate;
        var to = recorder is null ? from.Root : on.Bound.Network.Of(recorder) ?? from.Root;
        if (to.Root != from.Root)
            to = from.Root;
        var (up, down) = (from, to);
        while (up != down)
        {
            if (up.Depth >= down.Depth)
            {
                on.Switches[up.Index].StreamUp += rate;
                up = up.Parent!;
            }
            else
            {
                on.Switches[down.Index].StreamDown += rate;
                down = down.Parent!;
            }
        }
    }

    private static void Sum(SwitchTraffic[] switches, TrafficReckoner reckoner)
    {
        // Those farther from the line come later: walked backwards, what is behind a switch is complete when it is reached.
        for (var i = switches.Length - 1; i >= 0; i--)
        {
            var here = switches[i];
            here.Behind.Add(here.Own);
            var own = reckoner.Of(here.Own, 0, 0);
            Through(here, own, here.OwnStreams);
            if (here.Node.Parent is { } parent)
            {
                here.Uplink = reckoner.Of(here.Behind, here.StreamDown, here.StreamUp);
                Through(here, here.Uplink, 0);
                Through(switches[parent.Index], here.Uplink, 0);
                switches[parent.Index].Behind.Add(here.Behind);
            }
            else if (here.Node.Lines.Count > 0)
            {
                here.Line = reckoner.Of(here.Behind, 0, 0);
                Through(here, here.Line, 0);
            }
        }
    }

    // What goes in at one port goes out at another: both are counted, as data sheets do; of frames half of them.
    private static void Through(SwitchTraffic at, TrafficDemand demand, double streams)
    {
        at.ThroughBitsPerSecond += demand.Down + demand.Up + streams;
        var speech = 2 * demand.Calls * VoiceRate.OrdinaryCall;
        at.FramesPerSecond += (2 * demand.Calls * VoiceRate.OrdinaryPackets
            + (demand.Down + demand.Up + streams - speech) / ((MeanFrameOctets + FrameRate.OverheadOctets) * 8)) / 2;
    }
}
