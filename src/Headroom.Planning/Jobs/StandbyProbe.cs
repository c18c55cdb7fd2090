using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering;
using Headroom.Engineering.Racking;
using Headroom.Engineering.Standby;

namespace Headroom.Planning.Jobs;

/// <summary>Asks the study how much a standby supply feeds in a place with every reserve kept: minutes, watts and volt-amperes together.</summary>
internal sealed class StandbyProbe(Job job, Catalogue catalogue, string? place)
{
    // To a tenth of a watt.
    private const int Steps = 14;

    /// <summary>The most it feeds [W]; 0 when it feeds nothing.</summary>
    public double MostWatts(StandbyWay way)
    {
        var model = way.Model;
        var (low, high) = (0.0, model.Real?.Value.Value ?? 0);
        if (!Kept(model, 1) || !Fits(model))
            return 0;
        // What is left once ports are off hangs on what is plugged where: the study of the whole design says whether it lasts.
        if (way.Sheds)
            return high;
        for (var i = 0; i < Steps; i++)
        {
            var middle = (low + high) / 2;
            if (Kept(model, middle))
                low = middle;
            else
                high = middle;
        }

        return high;
    }

    // Too deep, too hot or too high where it stands, whatever hangs on it.
    private bool Fits(StandbyModel model)
    {
        var placed = new PlacedStandby("standby-1", model.Id, DesignMaker.Standing(model.Body, place, job.Survey), null, Place.None);
        return Of(placed, [RackingLedger.Discipline]);
    }

    private bool Kept(StandbyModel model, double watts)
    {
        var standby = new PlacedStandby("standby-1", model.Id, new Standing(place, null, null), null, Place.None) { Also = [new AlsoFed("load", Make.Given(new Watts(watts)))] };
        return Of(standby, [StandbyLedger.Discipline]);
    }

    private bool Of(PlacedStandby standby, IReadOnlyList<string> disciplines)
    {
        var design = new Design("probe", null, [], [], [standby], [], [], [], Place.None);
        var asks = job with
        {
            Designs = [design],
            Chosen = null,
            Policy = job.Policy with { Outage = job.Policy.Outage with { Keep = [] } },
            Survey = job.Survey with { Endpoints = [], Drops = [], Listeners = [] },
        };
        var ledger = Study.Run(asks, catalogue, new StudyRequest("probe", DateOnly.MinValue, [], disciplines));
        return !ledger.Entries.Any(entry => entry.Subject == "standby-1" && entry.Verdict is Verdict.Short or Verdict.Tight);
    }
}
