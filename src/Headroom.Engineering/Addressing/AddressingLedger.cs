using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Addressing;

/// <summary>Turns the result of the study of addresses into ledger entries.</summary>
public static class AddressingLedger
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "addressing";

    /// <summary>The entries of a result, in the order of the plan.</summary>
    /// <param name="result">The result.</param>
    /// <returns>The entries.</returns>
    public static List<LedgerEntry> Entries(AddressingResult result)
    {
        var entries = new List<LedgerEntry>();
        foreach (var subnet in result.Subnets)
            entries.Add(Addresses(subnet, result.Plan, result.Bound.Job.Policy.ReserveOf("addresses")));
        if (result.Homeless.Count > 0)
            entries.Add(Homeless(result));
        if (result.Plan.Names is not null)
            entries.Add(Names(result));
        return entries;
    }

    private static LedgerEntry Addresses(AddressedSubnet subnet, AddressPlan plan, Reserve reserve)
    {
        var (id, growth) = (subnet.Subnet.Id, plan.Growth?.Value.Value ?? AddressingStudy.UsualGrowth);
        // Without a place there is not one address; without a range to take from nobody knows.
        double? there = subnet.Range?.Hosts ?? (plan.From is null ? null : 0);
        var entry = new EntryDraft(Discipline, id, "addresses", "addresses", "addresses", "addresses").With(
            subnet.Today,
            there,
            reserve,
            new LateStory(
                e => subnet.Range is { } range
                    ? $"{id} needs {Words.Of(e.Demand!.Value)} addresses today and has {Words.Of(e.Limit!.Value)} in {range}."
                    : $"No place is free in {plan.From?.Value} for {id}, which is to have room for {subnet.Planned} devices.",
                e => new Working(
                    "devices + addresses that are lent + the router, against 2^(32 − prefix) − 2",
                    [
                        new("devices with an address of their own", subnet.Devices.Count, "", "survey and design"),
                        new("addresses that are lent out", subnet.Lent, "", Lent(subnet.Subnet)),
                        new("growth", 100 * growth, "%", plan.Growth is null ? "assumed, common practice, no source" : Origins.Of(plan.Growth)),
                        new("range to take from", null, "", plan.From is null ? "not written" : $"{plan.From.Value}, {plan.From.At}"),
                        LateStory.ReserveInput(e, reserve),
                    ],
                    [
                        new("today", "devices, lent, the router", subnet.Today, ""),
                        new("made for", $"{subnet.Today - 1} · {Words.Of(1 + growth)} + 1", subnet.Planned, ""),
                        new("range", subnet.Range is { } range ? $"{range}, mask {range.Mask}{(subnet.Subnet.Range is null ? ", the first free one" : ", as written")}" : "no place is free", there, ""),
                    ],
                    "RFC 950; private ranges RFC 1918, from memory"),
                e => [new("devices", "", subnet.Devices.Count, e.Limit - subnet.Lent - 1, e.Limit - subnet.Lent - 1 - e.Reserve)]));
        return entry with
        {
            Peak = there is null ? null : subnet.Planned,
            Question = there is null ? "which range of addresses may this site use? ask whoever runs the rest of the network, and write 'from'" : null,
            Assumed = plan.Growth is null ? ["as many devices again, since 'growth' is not written"] : [],
            Advice = entry.Studied != Verdict.Short ? [] : subnet.Range is null ? ["a wider range in 'from'", "or write the largest subnets first"] : ["a wider 'range'", "or leave 'range' out, so that the next free one is taken"],
        };
    }

    private static string Lent(Subnet subnet) => subnet.Visitors is { } visitors
        ? $"{visitors.PerHour} an hour for {visitors.Stay.Written}, lent for {visitors.Lease.Written}: enough for 99.9 % of the time"
        : subnet.MoreHosts is null ? "none written" : "as written";

    private static LedgerEntry Homeless(AddressingResult result) => new EntryDraft(Discipline, "subnets", "without", "devices without a subnet", "", "addresses").With(
        result.Homeless.Count,
        0,
        Reserve.Nothing,
        new LateStory(
            _ => $"No subnet is for {Words.List(result.Homeless)}.",
            _ => new Working("each device belongs to the first subnet that is for its kind and space", [], [new("devices without one", Words.List(result.Homeless, 40), result.Homeless.Count, "")], "counted"))) with
    {
        Advice = ["write their kind behind 'for' of a subnet"],
    };

    private static LedgerEntry Names(AddressingResult result)
    {
        var (clashing, wrong) = (result.NamesClashing, result.NamesWrong);
        var entry = new EntryDraft(Discipline, "names", "usable", "names not usable", "", "addresses").With(
            clashing.Count + wrong.Count,
            0,
            Reserve.Nothing,
            new LateStory(
                _ => clashing.Count + wrong.Count == 0 ? $"Every device has a name of its own by '{result.Plan.Names}', and every one may stand in a network."
                    : string.Join(" ", clashing.Take(3).Select(clash => $"{clash.Ids} would both be called {clash.Name}.").Concat(wrong.Take(3).Select(one => $"'{one.Name}' is no name: {one.Why}."))),
                _ => new Working(
                    "letters, digits and hyphens, 1 to 63 of them, none twice; a number at the end of an id is kept",
                    [new("pattern", null, "", $"{result.Plan.Names}")],
                    [.. clashing.Select(clash => new WorkingStep(clash.Name, clash.Ids, null, "")), .. wrong.Select(one => new WorkingStep(one.Name, one.Why, null, "")), new("names that cannot be used", "counted", clashing.Count + wrong.Count, "")],
                    "RFC 952, RFC 1123, RFC 1035, from memory")));
        return entry with { Advice = entry.Studied == Verdict.Short ? ["put {place} or {id} into the pattern", "or give the devices ids with numbers of their own"] : [] };
    }
}
