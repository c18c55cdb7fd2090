using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Money;
using Amount = Headroom.Domain.Quantities.Money;

namespace Headroom.Engineering.Years;

/// <summary>The models that a site uses, with what each costs.</summary>
internal static class UsedModels
{
    /// <summary>Those of which a price is known.</summary>
    public static IEnumerable<(string Id, Given<Amount> Price, Place At)> Of(LaterSite site) => Bodies(site)
        .DistinctBy(body => body.Id)
        .Select(body => (body.Id, Price: Pricing.PriceOf(site.Job, body), body.At))
        .Where(used => used.Price is not null).Select(used => (used.Id, used.Price!, used.At));

    private static IEnumerable<Body> Bodies(LaterSite site)
    {
        var (design, survey, all) = (site.Design, site.Job.Survey, site.Catalogue);
        var standby = Found(all.Standby, design.Standby.Select(unit => unit.Model)).ToList();
        var cables = survey.Drops.SelectMany(drop => drop.Pieces.Append(drop.CordAtPanel).Append(drop.CordAtDevice)).Select(piece => piece?.Cable).Distinct().ToList();
        return
        [
            .. Found(all.Switches, design.Switches.Select(unit => unit.Model)).Select(model => model.Body),
            .. Found(all.Injectors, design.Injectors.Select(unit => unit.Model)).Select(model => model.Body),
            .. standby.Select(model => model.Body),
            .. Found(all.Batteries, standby.Select(model => model.Battery)).Select(model => model.Body),
            .. Found(all.Fans, design.Switches.Select(unit => unit.Fan)).Select(model => model.Body),
            .. Found(all.Modules, (design.Uplinks ?? []).SelectMany(link => new[] { link.Module, link.FarModule })).Select(model => model.Body),
            .. Found(all.Endpoints, survey.Endpoints.Select(endpoint => endpoint.Model).Distinct()).Select(model => model.Body),
            .. Found(all.Cables, cables).Select(model => model.Body),
            .. Found(all.Fibres, cables).Select(model => model.Body),
            .. Found(all.Cabinets, survey.Racks.Select(rack => rack.Cabinet)).Select(model => model.Body),
        ];
    }

    private static IEnumerable<T> Found<T>(IReadOnlyDictionary<string, T> models, IEnumerable<string?> names) =>
        names.OfType<string>().Where(models.ContainsKey).Select(name => models[name]);
}
