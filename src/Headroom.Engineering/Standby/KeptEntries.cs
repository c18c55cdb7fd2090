using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Standby;

/// <summary>Entries for what must go on working: what it needs on batteries, and when it is back.</summary>
internal static class KeptEntries
{
    /// <summary>Adds the entries of one service.</summary>
    public static void Add(List<LedgerEntry> entries, KeptService service, Policy policy)
    {
        entries.Add(Way(service));
        if (policy.Outage.BackWithin is null)
            return;
        entries.Add(service.Dark.Count > 0 ? Dark(service) : Back(service, policy));
    }

    private static LedgerEntry Way(KeptService service)
    {
        var (needs, there) = ((double)service.Needs.Count, (double)(service.Needs.Count - service.Missing.Count));
        var verdict = service.Missing.Count > 0 || service.Shed.Count > 0 ? Verdict.Short : service.Question is not null ? Verdict.Unknown : Verdict.Clear;
        return Entry(service, ("on-battery", "boxes on the battery", "boxes", "kept")) with
        {
            Demand = needs,
            Limit = there,
            Reserve = 0,
            Studied = verdict,
            Question = verdict == Verdict.Unknown ? service.Question : null,
            Advice = Advice(service),
            Story = new KeptStory(service),
        };
    }

    private static List<string> Advice(KeptService service)
    {
        var advice = new List<string>();
        if (service.Missing.Count > 0)
            advice.Add($"feed {Words.List(service.Missing)} from a standby supply, and say so ('fed-by' of a unit, 'also' of the supply)");
        if (service.Shed.Count > 0)
            advice.Add($"give {Words.List(service.Ids)} a priority that is not switched off");
        return advice;
    }

    private static LedgerEntry Back(KeptService service, Policy policy)
    {
        var (wish, reserve) = (policy.Outage.BackWithin!.Value.Value / 60, policy.ReserveOf("back"));
        var verdict = Judge.Of(service.BackSeconds / 60, wish, reserve);
        return Entry(service, ("back", "minutes until it is back", "min", "back")) with
        {
            Demand = service.BackSeconds / 60,
            Limit = wish,
            Reserve = reserve.Of(wish),
            Studied = verdict,
            Question = verdict == Verdict.Unknown ? service.BackQuestion : null,
            Sense = Sense.AtMost,
            Story = new BackStory(service, policy.Outage.BackWithin, reserve),
        };
    }

    private static LedgerEntry Dark(KeptService service) => Entry(service, ("back", "back after an outage", "", "kept")) with
    {
        Demand = service.Ids.Count,
        Limit = service.Ids.Count - service.Dark.Count,
        Reserve = 0,
        Studied = Verdict.Short,
        Story = new DarkStory(service),
    };

    private static LedgerEntry Entry(KeptService service, (string Quantity, string What, string Unit, string Kind) of) => new()
    {
        Id = $"standby/{service.Name.Replace(' ', '-')}/{of.Quantity}",
        Discipline = StandbyLedger.Discipline,
        Subject = service.Name,
        Quantity = of.Quantity,
        What = of.What,
        Unit = of.Unit,
        Kind = of.Kind,
        Sense = Sense.AtLeast,
        Studied = Verdict.Unknown,
        Story = new KeptStory(service),
    };
}
