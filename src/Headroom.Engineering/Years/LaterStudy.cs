using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Money;

namespace Headroom.Engineering.Years;

/// <summary>Studies a job as it will be after so many months: a changed copy of it, by the one door to the sums.</summary>
internal sealed class LaterStudy(Job job, Catalogue catalogue, StudyRequest request, Design design)
{
    private const double MonthsPerYear = 12;
    private readonly LaterSite _today = LaterSite.Today(job, design, catalogue);
    private readonly IReadOnlyList<string> _wanted = request.Only ?? Study.Disciplines;

    /// <summary>The changes that happen at all, those of prices apart: nothing is added, or no age or loss is known, where one is missing.</summary>
    public IReadOnlyList<Change> Changes { get; } =
    [
        .. job.Policy.Years?.Devices is { Count: > 0 } ? new[] { Change.Devices } : [],
        .. design.Standby.Any(unit => unit.BatteryAge is not null) ? new[] { Change.Batteries } : [],
        .. job.Policy.Years?.AirLost is not null ? new[] { Change.Dust } : [],
    ];

    /// <summary>The ledger after so many months, with some of the changes or all.</summary>
    public LaterLedger At(int months, Change changes)
    {
        var years = months / MonthsPerYear;
        var site = _today;
        if (months > 0)
            site = Grown(site, changes, years);
        var on = request.On.AddMonths(months);
        var entries = Entries(site, [.. _wanted.Where(name => name != MoneyLedger.Discipline)], on);
        // Money asks another question: what the offer of today comes to when it is made then.
        if (_wanted.Contains(MoneyLedger.Discipline) && job.Money is not null)
            entries = [.. entries, .. Entries(months > 0 && changes.HasFlag(Change.Prices) ? RisingPrices.To(_today, years) : _today, [MoneyLedger.Discipline], on)];
        return new LaterLedger(months, on, entries, site.Added);
    }

    private static LaterSite Grown(LaterSite site, Change changes, double years)
    {
        if (changes.HasFlag(Change.Devices))
            site = DeviceAdding.To(site, years);
        if (changes.HasFlag(Change.Batteries))
            site = BatteryAging.To(site, years);
        return changes.HasFlag(Change.Dust) ? DustyAir.To(site, years) : site;
    }

    private IReadOnlyList<LedgerEntry> Entries(LaterSite site, IReadOnlyList<string> only, DateOnly on) =>
        only.Count == 0 ? [] : Study.Run(site.Job, site.Catalogue, request with { Design = site.Design.Id, Only = only, On = on }).Entries;
}
