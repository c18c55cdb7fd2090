using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>A design with all that it takes over, by name and bound to its models.</summary>
internal sealed class DesignView(Design whole, JobNames names)
{
    /// <summary>The design with all that it takes over.</summary>
    public Design Whole { get; } = whole;

    /// <summary>The designs it is like, from the nearest.</summary>
    public IReadOnlyList<string> Likes { get; } = LikesOf(whole.Id, names);

    /// <summary>Switches by id.</summary>
    public Dictionary<string, PlacedSwitch> Switches { get; } = JobNames.By(whole.Switches, s => s.Id);

    /// <summary>Injectors by id.</summary>
    public Dictionary<string, PlacedInjector> Injectors { get; } = JobNames.By(whole.Injectors, i => i.Id);

    /// <summary>Standby supplies by id.</summary>
    public Dictionary<string, PlacedStandby> Standby { get; } = JobNames.By(whole.Standby, s => s.Id);

    /// <summary>The links, none when the design does not say.</summary>
    public IReadOnlyList<Uplink> Uplinks => Whole.Uplinks ?? [];

    /// <summary>The units that have ports, by id.</summary>
    public IEnumerable<string> PortUnits => Switches.Keys.Concat(Injectors.Keys);

    /// <summary>The model of a switch; null when it has none or the catalogue does not know it.</summary>
    public SwitchModel? ModelOf(PlacedSwitch unit) =>
        unit.Model is { } model ? names.Catalogue.Switches.GetValueOrDefault(model) : null;

    /// <summary>The model of an injector; null when it has none or the catalogue does not know it.</summary>
    public InjectorModel? ModelOf(PlacedInjector unit) =>
        unit.Model is { } model ? names.Catalogue.Injectors.GetValueOrDefault(model) : null;

    /// <summary>The body of a unit's model; null when it is not known.</summary>
    public Body? BodyOf(PlacedStandby unit) =>
        unit.Model is { } model ? names.Catalogue.Standby.GetValueOrDefault(model)?.Body : null;

    /// <summary>All units with where they stand.</summary>
    public IEnumerable<StandingUnit> Units => Whole.Switches.Select(s => new StandingUnit(s.Id, s.Standing, ModelOf(s)?.Body, s.At))
        .Concat(Whole.Injectors.Select(i => new StandingUnit(i.Id, i.Standing, ModelOf(i)?.Body, i.At)))
        .Concat(Whole.Standby.Select(s => new StandingUnit(s.Id, s.Standing, BodyOf(s), s.At)))
        .Concat(names.Job.Survey.Fittings.Concat(Whole.Fittings).Select(f => new StandingUnit(f.Id, f.Standing, null, f.At) { Own = f.Height }));

    /// <summary>The port group that holds a port; null when the model has no such port.</summary>
    public static PortGroup? GroupOf(SwitchModel model, int port) => model.Ports.FirstOrDefault(g => g.First <= port && port <= g.Last);

    /// <summary>Ports in words: <c>1..8 and 9..10</c>.</summary>
    public static string PortsInWords(IEnumerable<PortGroup> groups) =>
        string.Join(" and ", groups.Select(g => g.First == g.Last ? $"{g.First}" : $"{g.First}..{g.Last}"));

    private static List<string> LikesOf(string id, JobNames names)
    {
        var likes = new List<string>();
        for (var like = names.Designs[id].Like; like is not null; like = names.Designs[like].Like)
            likes.Add(like);
        return likes;
    }
}
