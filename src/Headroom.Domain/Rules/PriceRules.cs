using Headroom.Domain.Catalogues;

namespace Headroom.Domain.Rules;

/// <summary>Prices are those of models that the catalogue has.</summary>
internal static class PriceRules
{
    /// <summary>Asks about prices of anything else.</summary>
    public static void Ask(JobNames names, Slips slips)
    {
        if (names.Job.Prices.Count == 0)
            return;
        var known = Models(names.Catalogue);
        foreach (var price in names.Job.Prices.Where(price => !known.Contains(price.Model)))
            slips.Unknown(RuleCodes.UnknownPriced, price.At, new("model", price.Model, "a price", "of the catalogue"), known);
    }

    /// <summary>The ids of all models of a catalogue.</summary>
    internal static HashSet<string> Models(Catalogue all) =>
    [
        .. all.Switches.Keys, .. all.Injectors.Keys, .. all.Endpoints.Keys, .. all.Cables.Keys, .. all.Fibres.Keys,
        .. all.Modules.Keys, .. all.Standby.Keys, .. all.Batteries.Keys, .. all.Fans.Keys, .. all.Cabinets.Keys,
    ];
}
