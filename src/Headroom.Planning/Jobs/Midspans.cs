using Headroom.Domain.Catalogues;

namespace Headroom.Planning.Jobs;

/// <summary>Midspans beside a switch, all of one model.</summary>
/// <param name="Model">Their model.</param>
/// <param name="Count">How many; 1 or more.</param>
internal sealed record Midspans(InjectorModel Model, int Count)
{
    // More beside one switch are another switch's.
    private const int MostBeside = 3;

    /// <summary>What people call them.</summary>
    public string Name => Count == 1 ? Model.Id : $"{Count} x {Model.Id}";

    /// <summary>What may stand beside a switch that gives no power itself: few of them, and no more than there are things to feed.</summary>
    /// <param name="model">The switch.</param>
    /// <param name="catalogue">The models.</param>
    /// <param name="asked">How many things ask for power by their class, and how many take a voltage that asks nobody.</param>
    public static IEnumerable<Midspans> Beside(SwitchModel model, Catalogue catalogue, (int ByClass, int Passive) asked)
    {
        if (model.Ports.Any(group => group.Poe is not null || group.Passive is not null))
            yield break;
        var ports = model.Ports.Where(group => group.Media == "copper").Sum(group => group.Last - group.First + 1);
        foreach (var midspan in catalogue.Injectors.Values.Where(one => one.Ports > 1 && one.Supply.Input != "dc").OrderBy(one => one.Id, StringComparer.Ordinal))
        {
            var most = Math.Min(Math.Min(MostBeside, ports), midspan.Passive is null ? asked.ByClass : asked.Passive);
            for (var count = 1; count <= most; count++)
                yield return new(midspan, count);
        }
    }

    /// <summary>What they give together [W]; null when not known.</summary>
    public double? Watts => (Model.Supply.PortWatts?.Value.Value ?? Model.Passive?.Volts.Value.Value * Model.Passive?.Amperes?.Value.Value * Model.Ports) is { } each ? each * Count : null;
}
