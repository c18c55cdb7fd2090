using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Years;

/// <summary>Takes air from the fans of the units of a copy of a site, as dust does until somebody cleans.</summary>
internal static class DustyAir
{
    /// <summary>The site with less air.</summary>
    public static LaterSite To(LaterSite site, double years)
    {
        if (site.Job.Policy.Years is not { AirLost: { } lost } policy || years <= 0)
            return site;
        var share = Math.Pow(1 - lost.Value.Value, Rates.SinceCleaning(years, policy.CleanedEvery?.Value.Value / BatteryAging.SecondsPerYear));
        var switches = new Dictionary<string, SwitchModel>(site.Catalogue.Switches);
        foreach (var model in site.Design.Switches.Select(unit => unit.Model).OfType<string>().Distinct())
        {
            if (switches.TryGetValue(model, out var known) && known.Sound is { } sound)
                switches[model] = known with { Sound = Less(sound, share) };
        }

        var standby = new Dictionary<string, StandbyModel>(site.Catalogue.Standby);
        foreach (var model in site.Design.Standby.Select(unit => unit.Model).OfType<string>().Distinct())
        {
            if (standby.TryGetValue(model, out var known) && known.Sound is { } sound)
                standby[model] = known with { Sound = Less(sound, share) };
        }

        return site with { Catalogue = site.Catalogue with { Switches = switches, Standby = standby } };
    }

    /// <summary>True when the air of a fan of the design is known, so that dust can take of it.</summary>
    public static bool HasAir(Design design, Catalogue catalogue) =>
        design.Switches.Any(unit => unit.Model is { } model && catalogue.Switches.TryGetValue(model, out var known) && known.Sound?.Levels.Any(level => level.Flow is not null) == true);

    private static SoundModel Less(SoundModel sound, double share) => sound with
    {
        Levels = [.. sound.Levels.Select(level => level.Flow is { } flow ? level with { Flow = flow with { Value = new(flow.Value.Value * share) } } : level)],
    };
}
