using System.Globalization;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Years;

/// <summary>Adds devices to a copy of a site, each like the one of its kind that is furthest away.</summary>
internal static class DeviceAdding
{
    /// <summary>The site with what is added by then.</summary>
    public static LaterSite To(LaterSite site, double years)
    {
        foreach (var growth in site.Job.Policy.Years?.Devices ?? [])
            site = Add(site, growth, years);
        return site;
    }

    private static LaterSite Add(LaterSite site, DeviceGrowth growth, double years)
    {
        var alike = Alike(site, growth.Name);
        var count = growth.Yearly.Amount is { } amount ? Rates.Added(amount, years) : Rates.AddedByShare(alike.Count, growth.Yearly.Share ?? 0, years);
        var like = Furthest(site, alike);
        var model = like?.Model ?? (site.Catalogue.Endpoints.ContainsKey(growth.Name) ? growth.Name : null);
        var added = new AddedDevices(growth.Name, alike.Count, model is null ? 0 : count, like?.Id, model, 0);
        if (added.Count == 0)
            return site with { Added = [.. site.Added, added] };
        var adding = new Adding(site, like ?? Bare(growth, model!));
        for (var number = 1; number <= count; number++)
            adding.Add(string.Create(CultureInfo.InvariantCulture, $"{growth.Name.Replace(' ', '-')}+{number}"));
        return adding.Site with { Added = [.. site.Added, added with { WithoutPort = adding.WithoutPort }] };
    }

    // Those of today only: what another line of the policy added is no base for growth.
    private static List<Endpoint> Alike(LaterSite site, string name) =>
        [.. site.Job.Survey.Endpoints.Where(endpoint => !endpoint.Id.Contains('+') && (endpoint.Model == name || KindOf(endpoint, site.Catalogue) == name))];

    private static string? KindOf(Endpoint endpoint, Catalogue catalogue) => catalogue.Endpoints.GetValueOrDefault(endpoint.Model)?.Kind;

    // Of the model that most of them are, the one with the longest run: what is added is no easier to feed than what is there.
    private static Endpoint? Furthest(LaterSite site, List<Endpoint> alike)
    {
        var metres = site.Job.Survey.Drops.DistinctBy(drop => drop.Id).ToDictionary(drop => drop.Id, Metres);
        return alike.GroupBy(endpoint => endpoint.Model).OrderByDescending(group => group.Count()).FirstOrDefault()
            ?.OrderByDescending(endpoint => endpoint.Drop is { } drop ? metres.GetValueOrDefault(drop, -1) : -1).First();
    }

    private static double Metres(Drop drop) =>
        drop.Pieces.Count == 0 || drop.Pieces.Any(piece => piece.Length is null) ? -1 : drop.Pieces.Sum(piece => piece.Length!.Value.Value);

    private static Endpoint Bare(DeviceGrowth growth, string model) => new("", model, null, null, null, new Dictionary<string, Domain.Quantities.Given<Domain.Quantities.Watts>>(), null, null, growth.At);
}
