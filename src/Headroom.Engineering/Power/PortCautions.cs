using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Which cautions apply to a powered port.</summary>
internal sealed class PortCautions
{
    private readonly HashSet<string> _mixedSpaces;

    /// <summary>Looks which spaces hold drops with and without passive voltage.</summary>
    public PortCautions(PowerResult result)
    {
        var live = result.Ports.Where(port => port.Feed.Passive is not null).Select(port => port.Endpoint)
            .Concat(result.LivePins.Select(pin => pin.Endpoint).OfType<BoundEndpoint>()).ToList();
        var panels = live.Select(PanelOf).OfType<string>().ToHashSet();
        var ids = live.Select(endpoint => endpoint.Id).ToHashSet();
        _mixedSpaces = panels.Count == 0 ? []
            : [.. result.Bound.Endpoints.Where(endpoint => !ids.Contains(endpoint.Id)).Select(PanelOf).OfType<string>().Where(panels.Contains)];
    }

    /// <summary>The cautions of one port.</summary>
    public IReadOnlyList<Caution> Of(PoweredPort port)
    {
        var clad = port.Endpoint.PowerRun is { } run && HasCopperClad(run.Pieces);
        if (port.Feed.Passive is null)
            return clad ? [CautionTable.CopperClad] : port.Fault == PortFault.TooManyVolts ? [CautionTable.TooManyVolts] : [];
        var cautions = new List<Caution>(3);
        if (port.Fault == PortFault.TooManyVolts)
            cautions.Add(CautionTable.TooManyVolts);
        cautions.Add(CautionTable.AlwaysOn);
        if (PanelOf(port.Endpoint) is { } panel && _mixedSpaces.Contains(panel))
            cautions.Add(CautionTable.MixedPanel);
        if (clad)
            cautions.Add(CautionTable.CopperClad);
        return cautions;
    }

    private static bool HasCopperClad(IReadOnlyList<BoundPiece> pieces)
    {
        for (var i = 0; i < pieces.Count; i++)
        {
            if (pieces[i].CopperClad)
                return true;
        }

        return false;
    }

    private static string? PanelOf(BoundEndpoint endpoint) => endpoint.FromFarEnd is null ? endpoint.Run?.Drop.From : null;
}
