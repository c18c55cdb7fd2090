using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Years;

/// <summary>Lets the batteries of a copy of a site age; nobody changes them. An age that nobody knows stays unknown.</summary>
internal static class BatteryAging
{
    /// <summary>A year as files write it [s].</summary>
    internal const double SecondsPerYear = 31557600;

    /// <summary>The site with older batteries.</summary>
    public static LaterSite To(LaterSite site, double years)
    {
        var standby = site.Design.Standby.Select(unit => unit.BatteryAge is { } age ? unit with { BatteryAge = Older(age, years) } : unit);
        return site.With(site.Design with { Standby = [.. standby] }, site.Job.Survey);
    }

    private static Given<Seconds> Older(Given<Seconds> age, double years) => age with
    {
        Value = new Seconds(age.Value.Value + years * SecondsPerYear),
        Written = $"{Words.Of(Math.Round(age.Value.Value / SecondsPerYear + years, 2))} years",
    };
}
