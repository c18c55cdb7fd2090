using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Standby;

/// <summary>Figures of outages that have no limit of their own.</summary>
internal static class StandbyFigures
{
    /// <summary>The figures of a result.</summary>
    public static IEnumerable<Figure> Of(StandbyResult result)
    {
        foreach (var supply in result.Supplies)
        {
            if (supply.Governing?.Seconds is not { } held)
                continue;
            if (supply.Wanted is null)
                yield return new($"standby/{supply.Placed.Id}/minutes", supply.Placed.Id, "minutes on battery, aged and cold", held / 60, "min", null, () => new RuntimeStory(supply, Domain.Jobs.Reserve.Nothing).Work(Nothing));
            if (supply.Model.Recharge is { } recharge && supply.Table is { } table && RechargeSeconds(supply) is { } seconds)
                yield return new($"standby/{supply.Placed.Id}/recharge", supply.Placed.Id, "to recharge from flat, bulk", seconds / 3600, "h", null, () => Recharge(supply, recharge.Value.Value, Origins.Of(recharge), table.IsLithium));
            if (supply.Wanted is not null && RuntimeAdvice.LatestShed(supply) is { } latest)
                yield return new($"standby/{supply.Placed.Id}/latest-shed", supply.Placed.Id, "latest to switch off low priority", latest.Seconds / 60, "min", null, () => new RuntimeStory(supply, Domain.Jobs.Reserve.Nothing).Work(Nothing));
        }

        foreach (var service in result.Kept)
        {
            if (result.Bound.Job.Policy.Outage.BackWithin is null && service.Dark.Count == 0)
                yield return new($"standby/{service.Name.Replace(' ', '-')}/back", service.Name, "back after the mains is", service.BackSeconds / 60, "min", service.BackQuestion, () => Back(service));
        }
    }

    private static readonly LedgerEntry Nothing = new()
    {
        Id = "", Discipline = StandbyLedger.Discipline, Subject = "", Quantity = "", What = "", Unit = "min", Kind = "runtime", Studied = Verdict.Unknown, Story = new DarkStory(new("", [], [], [], [])),
    };

    // What the load has taken out when it is flat, new; efficiency of charging is held in the factor.
    private static double? RechargeSeconds(StandbySupply supply) => supply.Cases[0].Seconds is { } held && supply.Stages.Count > 0
        ? Recharging.BulkSeconds(Joules(supply, held), supply.Model.Recharge!.Value.Value, supply.Table!.IsLithium ? 1 : Recharging.LeadFactor)
        : null;

    private static double Joules(StandbySupply supply, double held)
    {
        var (sum, efficiency) = (0.0, supply.Table!.AtOutput ? supply.Model.Efficiency?.Value.Value ?? 1 : 1);
        for (var i = 0; i < supply.Stages.Count; i++)
        {
            var end = i + 1 < supply.Stages.Count ? Math.Min(held, supply.Stages[i + 1].FromSeconds) : held;
            sum += Math.Max(0, end - supply.Stages[i].FromSeconds) * supply.TableWatts(supply.Stages[i].Watts, 1) / efficiency;
        }

        return sum;
    }

    private static Working Recharge(StandbySupply supply, double watts, string origin, bool lithium)
    {
        var joules = Joules(supply, supply.Cases[0].Seconds!.Value);
        return new(
            "t = k E / P",
            [new("E taken out", joules / 3600, "Wh", "this study, new battery run flat"), new("P it recharges with", watts, "W", origin), new("k", lithium ? 1 : Recharging.LeadFactor, "", lithium ? "hardly any loss" : "seen in a battery handbook")],
            [
                new("bulk", "k E / P", RechargeSeconds(supply) / 3600, "h"),
                new("taper", lithium ? "none to speak of" : $"{Recharging.TaperHours.Least} to {Recharging.TaperHours.Most} h on top, common practice, no source", null, ""),
            ],
            "balance of energy");
    }

    private static Working Back(KeptService service)
    {
        var steps = new List<WorkingStep>(service.Parts.Count);
        foreach (var part in service.Parts)
            steps.Add(new(part.What, "from mains to use", part.Seconds / 60, "min"));
        return new("the latest of: the last device, the switches on its way, the line", [], steps, "restart of this study");
    }
}
