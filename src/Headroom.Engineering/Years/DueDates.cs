using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Years;

/// <summary>What is due, each with the way its day follows.</summary>
internal static class DueDates
{
    private const double DaysPerYear = 365.25;

    /// <summary>What is due within the years, in order; what is overdue first, what has no day yet behind.</summary>
    public static List<DueDate> Of(Job job, Catalogue catalogue, (StudyRequest Request, Design Design) of, int until)
    {
        var (on, policy) = (of.Request.On, job.Policy.Years ?? YearsPolicy.None);
        List<DueDate> all =
        [
            .. Study.Results(job, catalogue, of.Request with { Design = of.Design.Id }).Standby.Supplies.Select(supply => Battery(supply, on)),
            .. WarrantyDates.Of(of.Design, catalogue, policy, on),
            .. policy.Tests.Select(test => Repeated(policy, on, ("site", test.Name), test.Every)),
        ];
        if (policy.CleanedEvery is { } every)
            all.Add(Repeated(policy, on, ("fans", "dust taken out"), every));
        return [.. all.Where(due => due.On is null || due.On <= on.AddYears(until)).OrderBy(due => due.On is null).ThenBy(due => due.On)];
    }

    /// <summary>A day so many years after another.</summary>
    public static DateOnly After(DateOnly day, Given<Seconds> time) => After(day, time.Value.Value / BatteryAging.SecondsPerYear);

    private static DateOnly After(DateOnly day, double years)
    {
        // Whole months keep the day of the month, as contracts do; anything else is counted in days.
        var months = years * 12;
        return Math.Abs(months - Math.Round(months)) < 1e-6 ? day.AddMonths((int)Math.Round(months)) : day.AddDays((int)Math.Round(years * DaysPerYear));
    }

    private static DueDate Battery(StandbySupply supply, DateOnly on)
    {
        var (id, what) = (supply.Placed.Id, "batteries at the end of their life");
        if (supply.LifeYears is not { } life)
            return new(null, id, what, "not known", $"how long do the batteries of {id} live? the sheet of {supply.Battery?.Id ?? supply.Model.Battery ?? supply.Model.Id} says");
        if (supply.AgeYears is not { } age)
            return new(null, id, what, "not known", $"how old are the batteries of {id}? their lid or the bill says; write 'batteries'");
        var place = supply.Battery!.Chemistry == "lead" ? $", at {Words.Of(Math.Round(supply.Place.Mean, 1))} °C on average ({supply.Place.Origin.Replace("coldest case", "all cases", StringComparison.Ordinal)})" : "";
        return new(
            After(on, life - age), id, what,
            $"{Words.Of(Math.Round(life, 1))} years of life{place} from {supply.Battery.Life!.Written} ({Origins.Of(supply.Battery.Life)}); now {supply.Placed.BatteryAge!.Written} old ({Origins.Of(supply.Placed.BatteryAge)})",
            null)
        { EveryYears = life };
    }

    private static DueDate Repeated(YearsPolicy policy, DateOnly on, (string Subject, string What) of, Given<Seconds> every)
    {
        var years = every.Value.Value / BatteryAging.SecondsPerYear;
        if (policy.Installed is not { } installed)
            return new(null, of.Subject, of.What, $"every {every.Written} ({Origins.Of(every)})", "when was the site handed over? write 'installed' under 'years' of the policy") { EveryYears = years };
        var count = 1;
        while (After(installed, count * years) < on)
            count++;
        return new(After(installed, count * years), of.Subject, of.What, $"every {every.Written} ({Origins.Of(every)}) from {YearWords.Plain(installed)} on", null) { EveryYears = years };
    }
}
