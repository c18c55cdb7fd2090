using System.Globalization;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Works out the uplinks that run on light, and those whose module bounds a copper run.</summary>
internal sealed class FibreSums(BoundDesign bound)
{
    // 1300 nm in a cable's table and 1310 nm on a module are the same window.
    private const double SameWindowNanometres = 60;

    private Dictionary<string, BoundRun>? _runs;

    /// <summary>The links, in the order of the design.</summary>
    public List<FibreLink> Find()
    {
        var links = new List<FibreLink>();
        foreach (var uplink in bound.Design.Uplinks ?? [])
        {
            if (Link(uplink) is { } link)
                links.Add(link);
        }

        return links;
    }

    private FibreLink? Link(Uplink uplink)
    {
        var (near, far) = (Module(uplink.Module), Module(uplink.FarModule ?? uplink.Module));
        var light = uplink.Media == "fibre" || near?.Media is "multimode" or "singlemode";
        var run = uplink.Drop is { } id ? (_runs ??= ByDrop()).GetValueOrDefault(id) : null;
        if (!light && (near?.Media != "copper" || run is null))
            return null;
        var link = new FibreLink { Name = uplink.Drop ?? uplink.From.ToString(), Uplink = uplink, Near = near, Far = far, Run = run, IsCopper = !light };
        return Loss(Reach(Length(link)));
    }

    private static FibreLink Length(FibreLink link)
    {
        if (link.Run is not { } run)
            return link;
        var pieces = run.Pieces.Where(piece => link.IsCopper || !piece.Cord).ToList();
        return link with
        {
            Metres = pieces.TrueForAll(piece => piece.Metres is not null) ? pieces.Sum(piece => piece.Metres!.Value) : null,
            SpreadMetres = Math.Sqrt(pieces.Sum(piece => piece.SpreadMetres * piece.SpreadMetres)),
            Fibre = pieces.Select(piece => piece.Fibre).FirstOrDefault(fibre => fibre is not null),
            MatedPairs = run.Drop.MatedPairs ?? 2,
            Splices = run.Drop.Splices ?? 0,
        };
    }

    private static FibreLink Reach(FibreLink link)
    {
        foreach (var module in new[] { link.Near, link.Far }.OfType<ModuleModel>())
        {
            var (metres, origin) = ReachOf(module, link.IsCopper ? "copper" : link.Fibre?.Category);
            if (metres is null)
                return link with { ReachMetres = null, ReachOrigin = origin };
            if (!(metres >= link.ReachMetres))
                link = link with { ReachMetres = metres, ReachOrigin = origin };
        }

        return link;
    }

    private static (double? Metres, string Origin) ReachOf(ModuleModel module, string? on)
    {
        if (on is not null && module.Reach.TryGetValue(on, out var given))
            return (given.Value.Value, $"{module.Id} on {on}, {Origins.Of(given)}");
        return FibrePort.Of(module.PortType, on) is { } port
            ? (port.ReachMetres, $"{port.Type} on {on}, standard")
            : (null, "not known");
    }

    private static FibreLink Loss(FibreLink link)
    {
        if (link.IsCopper || link.Fibre is not { } fibre)
            return link;
        foreach (var module in new[] { link.Near, link.Far }.OfType<ModuleModel>())
        {
            var (most, mostOrigin) = Budget(module, fibre);
            var (loss, lossOrigin) = PerKilometre(module, fibre);
            if (!(most >= link.MostDecibels) && most is not null)
                link = link with { MostDecibels = most, MostOrigin = mostOrigin };
            if (!(loss <= link.DecibelsPerKilometre) && loss is not null)
                link = link with { DecibelsPerKilometre = loss, LossOrigin = lossOrigin };
        }

        return link;
    }

    private static (double? Decibels, string Origin) Budget(ModuleModel module, FibreModel fibre) =>
        FibrePort.Of(module.PortType, fibre.Category) is { } port ? (port.ChannelDecibels, $"{port.Type} on {fibre.Category}, standard")
        : module.LossBudget is { } declared ? (declared.Value.Value, $"{module.Id}, {Origins.Of(declared)}")
        : (null, "not known");

    private static (double? Decibels, string Origin) PerKilometre(ModuleModel module, FibreModel fibre)
    {
        if (module.Wavelength?.Value.Value is not { } nanometres)
            return (null, "not known");
        var nearest = fibre.LossPerKilometre.Count == 0 ? (int?)null : fibre.LossPerKilometre.Keys.MinBy(key => Math.Abs(key - nanometres));
        if (nearest is { } at && Math.Abs(at - nanometres) <= SameWindowNanometres)
            return (fibre.LossPerKilometre[at].Value.Value, $"{fibre.Id} at {at.ToString(CultureInfo.InvariantCulture)} nm, {Origins.Of(fibre.LossPerKilometre[at])}");
        return FibreLoss.DecibelsPerKilometre(fibre.Category, nanometres) is { } loss ? (loss, $"{fibre.Category}, standard") : (null, "not known");
    }

    private Dictionary<string, BoundRun> ByDrop()
    {
        var runs = new Dictionary<string, BoundRun>(bound.Runs.Count);
        foreach (var run in bound.Runs)
            runs.TryAdd(run.Drop.Id, run);
        return runs;
    }

    private ModuleModel? Module(string? id) => id is null ? null : bound.Catalogue.Modules.GetValueOrDefault(id);
}
