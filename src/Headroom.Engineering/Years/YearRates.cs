using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Years;

/// <summary>What changes with the years and how fast; what nobody said is unknown, and asked for.</summary>
internal static class YearRates
{
    /// <summary>The rates of a job, known ones first.</summary>
    public static List<Rate> Of(Job job, Design design, Catalogue catalogue)
    {
        var policy = job.Policy.Years ?? YearsPolicy.None;
        var rates = new List<Rate>(Devices(job, policy, catalogue));
        rates.AddRange(design.Standby.Select(unit => unit.BatteryAge is { } age
            ? new Rate($"batteries of {unit.Id}", "one year older", $"now {age.Written}, {Origins.Of(age)}", null)
            : Unknown($"batteries of {unit.Id}", $"how old are the batteries of {unit.Id}? their lid or the bill says; write 'batteries'")));
        if (DustyAir.HasAir(design, catalogue))
            rates.Add(Of("air of fans", policy.AirLost, "−", "how much of its air does a year of dust take? look at the filters of a switch of that age; write 'air lost' and 'cleaned every'"));
        if (job.Money is not null)
        {
            rates.Add(Of("prices of goods", policy.Prices, "+", "by how much do goods become dearer in a year? write 'prices'"));
            rates.Add(Of("price of an hour", policy.Wages, "+", "by how much does an hour become dearer in a year? write 'wages'"));
            if (job.Money.Owning is not null)
                rates.Add(Of("price of energy", policy.Energy, "+", "by how much does energy become dearer in a year? write 'energy'"));
        }

        return [.. rates.OrderBy(rate => rate.Question is not null)];
    }

    private static IEnumerable<Rate> Devices(Job job, YearsPolicy policy, Catalogue catalogue)
    {
        if (policy.Devices is not { } devices)
            return [Unknown("devices", "how many devices come in a year, and of which kind? write 'devices' under 'years' of the policy")];
        return devices.Count == 0
            ? [new Rate("devices", "none added", Origins.Of(Origin.Unstated, policy.At), null)]
            : devices.Select(growth => job.Survey.Endpoints.Any(endpoint => endpoint.Model == growth.Name || catalogue.Endpoints.GetValueOrDefault(endpoint.Model)?.Kind == growth.Name) || catalogue.Endpoints.ContainsKey(growth.Name)
                ? new Rate(growth.Name, $"+ {Bare(growth.Yearly.Written)}", Origins.Of(growth.Yearly.Origin, growth.Yearly.At), null) { IsAssumed = growth.Yearly.Origin == Origin.Assumed }
                : Unknown(growth.Name, $"which model is an added {growth.Name}? the survey has none; write its model in place of '{growth.Name}'"));
    }

    private static Rate Of(string what, Given<Share>? yearly, string sign, string question) => yearly is { } given
        ? new Rate(what, $"{sign} {Bare(given.Written)}", Origins.Of(given), null) { IsAssumed = given.Origin == Origin.Assumed }
        : Unknown(what, question);

    // The word behind the number is told as its origin.
    private static string Bare(string written) => written.Contains('%') ? written[..(written.IndexOf('%') + 1)] : written.Split(' ')[0];

    private static Rate Unknown(string what, string question) => new(what, null, "not known", question);
}
