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
    private readonly double _bits;

    /// <summary>Finds it in a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">The models.</param>
    /// <param name="places">Where switches may stand.</param>
    /// <param name="prices">What modules cost.</param>
    /// <param name="bits">The least rate of a link [bit/s]; 0 for any.</param>
    public LineWay(Job job, Catalogue catalogue, IReadOnlyList<string?> places, UnitPrices prices, double bits)
    {
        (_job, _catalogue, _bits) = (job, catalogue, bits);
        _modules = [.. catalogue.Modules.Values.Where(module => module.Receives is null && module.Speed.Value.Value >= bits && prices.Of(module) is not null).OrderBy(module => prices.Of(module)!.Goods).ThenBy(module => module.Id, StringComparer.Ordinal)];
        CopperModule = _modules.Find(module => module.Media == "copper");
        LineId = job.Survey.Lines.Count > 0 ? job.Survey.Lines[0].Id : "line";
        var used = job.Survey.Endpoints.Select(endpoint => endpoint.Drop).ToHashSet();
        var fibres = job.Survey.Drops.Where(drop => !used.Contains(drop.Id) && Fibre(drop) is not null).ToList();
        Drop = fibres.Find(drop => places.Contains(drop.From) && !places.Contains(drop.To));
        LineModule = Drop is null ? null : ModuleFor(Drop);
        var backbones = fibres.Where(drop => places.Contains(drop.From) && places.Contains(drop.To) && drop.From != drop.To).ToList();
        Root = RootOf(places, backbones);
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

    /// <summary>Says whether a copper port is fast enough for links.</summary>
    public bool IsFast(PortGroup group) => _bits == 0 || group.Speeds.Any(speed => speed.Value.Value >= _bits);

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
                if (at < 0 || ModuleFor(drop) is not { } module || !known.Add(at))
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

    private ModuleModel? ModuleFor(Drop drop)
    {
        var metres = drop.Pieces.Sum(piece => piece.Length?.Value.Value ?? 0);
        return _modules.Find(module => module.Reach.TryGetValue(Fibre(drop)!.Category, out var reach) && reach.Value.Value >= metres);
    }
}
