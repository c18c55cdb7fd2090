using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>How links run: where the line comes in, which fibres lie between places, and which modules go into pluggable ports.</summary>
internal sealed class LineWay
{
    private readonly Job _job;
    private readonly Catalogue _catalogue;
    private readonly List<ModuleModel> _modules;
    private readonly LinkRates _rates;

    /// <summary>Finds it in a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">The models.</param>
    /// <param name="places">Where switches may stand.</param>
    /// <param name="prices">What modules cost.</param>
    /// <param name="rates">The least rates of links.</param>
    public LineWay(Job job, Catalogue catalogue, IReadOnlyList<string?> places, UnitPrices prices, LinkRates rates)
    {
        (_job, _catalogue, _rates) = (job, catalogue, rates);
        _modules = [.. catalogue.Modules.Values.Where(module => module.Receives is null && prices.Of(module) is not null).OrderBy(module => prices.Of(module)!.Goods).ThenBy(module => module.Id, StringComparer.Ordinal)];
        CopperModule = _modules.Find(module => module.Media == "copper" && module.Speed.Value.Value >= rates.Of(0, LinkKind.Inner));
        LineId = job.Survey.Lines.Count > 0 ? job.Survey.Lines[0].Id : "line";
        var used = job.Survey.Endpoints.Select(endpoint => endpoint.Drop).ToHashSet();
        var fibres = job.Survey.Drops.Where(drop => !used.Contains(drop.Id) && Fibre(drop) is not null).ToList();
        Drop = fibres.Find(drop => places.Contains(drop.From) && !places.Contains(drop.To));
        var backbones = fibres.Where(drop => places.Contains(drop.From) && places.Contains(drop.To) && drop.From != drop.To).ToList();
        Root = RootOf(places, backbones);
        LineModule = Drop is null ? null : ModuleFor(Drop, rates.Of(Root, LinkKind.Line));
        Ways = TreeOf(places, backbones);
        Links = [.. Enumerable.Range(0, places.Count).Select(LinksOf)];
    }

    /// <summary>The name of the line.</summary>
    public string LineId { get; }

    /// <summary>The fibre on which the line comes in; null when nobody has laid one.</summary>
    public Drop? Drop { get; }

    /// <summary>The module for it; null without fibre.</summary>
    public ModuleModel? LineModule { get; }

    /// <summary>The module that makes a pluggable port a copper one; null when none has a price.</summary>
    public ModuleModel? CopperModule { get; }

    /// <summary>The place where the line comes in.</summary>
    public int Root { get; }

    /// <summary>How each place hangs on another; null for the root.</summary>
    public IReadOnlyList<BackboneWay?> Ways { get; }

    /// <summary>The links that leave each place.</summary>
    public IReadOnlyList<PlaceLinks> Links { get; }

    /// <summary>Says whether a copper port is fast enough for links of a kind that lead out of a place, or lie inside any.</summary>
    public bool IsFast(PortGroup group, int place, LinkKind kind) => _rates.Of(place, kind) is var bits && (bits == 0 || group.Speeds.Any(speed => speed.Value.Value >= bits));

    /// <summary>Says whether a link that leads out of a place can be faster than some rate.</summary>
    public bool HasFaster(int place, LinkKind kind, double bits)
    {
        var drop = kind == LinkKind.Line ? Drop : Ways[place]?.Drop;
        return drop is null
            ? _catalogue.Switches.Values.Any(model => model.Ports.Any(group => group.Media == "copper" && group.Speeds.Any(speed => speed.Value.Value >= bits))) || _modules.Exists(module => module.Media == "copper" && module.Speed.Value.Value >= bits)
            : ModuleFor(drop, bits) is not null;
    }

    /// <summary>What tells the links of two places apart.</summary>
    public string KeyOf(int place) =>
        $"{string.Join(',', BackbonesOf(place).Select(module => module?.Id ?? "-"))}/{_rates.Of(place, LinkKind.Backbone)}/{_rates.Of(place, LinkKind.Line)}/{_rates.Of(0, LinkKind.Inner)}";

    /// <summary>The modules of the links to other places that end in a place; null for copper.</summary>
    public IEnumerable<ModuleModel?> BackbonesOf(int place)
    {
        if (Ways[place] is { } own)
            yield return own.Module;
        foreach (var way in Ways.Where(way => way?.Parent == place))
            yield return way!.Module;
    }

    /// <summary>True when a module runs in ports of a group.</summary>
    public static bool RunsIn(ModuleModel module, PortGroup group) =>
        group.Media == "pluggable" && group.Speeds.Any(speed => speed.Value == module.Speed.Value);

    // Where the line is known to come in; else where most fibres meet.
    private int RootOf(IReadOnlyList<string?> places, List<Drop> backbones) => Drop is not null
        ? places.ToList().IndexOf(Drop.From)
        : Enumerable.Range(0, places.Count).MaxBy(place => backbones.Count(drop => drop.From == places[place] || drop.To == places[place]));

    private BackboneWay?[] TreeOf(IReadOnlyList<string?> places, List<Drop> backbones)
    {
        var ways = new BackboneWay?[places.Count];
        var known = new HashSet<int> { Root };
        var next = new Queue<int>([Root]);
        while (next.TryDequeue(out var place))
        {
            foreach (var drop in backbones)
            {
                var other = drop.From == places[place] ? drop.To : drop.To == places[place] ? drop.From : null;
                var at = other is null ? -1 : places.ToList().IndexOf(other);
                if (at < 0 || ModuleFor(drop, _rates.Of(at, LinkKind.Backbone)) is not { } module || !known.Add(at))
                    continue;
                ways[at] = new(place, drop, module);
                next.Enqueue(at);
            }
        }

        for (var place = 0; place < places.Count; place++)
            ways[place] ??= place == Root ? null : new(Root, null, null);
        return ways;
    }

    private PlaceLinks LinksOf(int place)
    {
        var children = Ways.Count(way => way?.Parent == place);
        return new(place == Root ? 1 : 0, children + (place == Root ? 0 : 1), children > 0);
    }

    private FibreModel? Fibre(Drop drop) =>
        drop.Pieces.Select(piece => piece.Cable is { } cable ? _catalogue.Fibres.GetValueOrDefault(cable) : null).FirstOrDefault(fibre => fibre is not null);

    private ModuleModel? ModuleFor(Drop drop, double bits)
    {
        var metres = drop.Pieces.Sum(piece => piece.Length?.Value.Value ?? 0);
        return _modules.Find(module => module.Speed.Value.Value >= bits && module.Reach.TryGetValue(Fibre(drop)!.Category, out var reach) && reach.Value.Value >= metres);
    }
}
