using Headroom.Domain.Addresses;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>Ranges of addresses keep out of each other's way, and every device belongs to one subnet.</summary>
internal static class AddressRules
{
    /// <summary>The parts of which a pattern for names may be made.</summary>
    public static IReadOnlyList<string> Parts { get; } = ["role", "place", "number", "id"];

    /// <summary>Checks the addresses of the survey.</summary>
    public static void Check(JobNames names, Slips slips)
    {
        if (names.Job.Survey.Addresses is not { } plan)
            return;
        Ranges(plan, slips);
        Numbers(plan, slips);
        Kinds(plan, names, slips);
        Pattern(plan, slips);
    }

    private static void Ranges(AddressPlan plan, Slips slips)
    {
        var seen = new List<(string Name, Ip4Range Range)>();
        foreach (var elsewhere in plan.Elsewhere)
            seen.Add(("what is used elsewhere", elsewhere.Value));
        foreach (var subnet in plan.Subnets)
        {
            if (subnet.Range is not { } range)
                continue;
            if (plan.From is { } from && !from.Value.Contains(range.Value))
                slips.Add(RuleCodes.RangeOutside, range.At, new($"subnet {subnet.Id} has {range.Value}", $"addresses are taken from {from.Value}", "Correct one of the two ranges."));
            foreach (var (name, other) in seen)
            {
                if (other.Overlaps(range.Value))
                    slips.Add(RuleCodes.RangesMeet, range.At, new($"subnet {subnet.Id} has {range.Value}, and {name} has {other}", "no address belongs to two ranges", "Give one of the two another range."));
            }

            seen.Add(($"subnet {subnet.Id}", range.Value));
        }
    }

    private static void Numbers(AddressPlan plan, Slips slips)
    {
        var taken = new Dictionary<int, string>();
        foreach (var subnet in plan.Subnets)
        {
            if (subnet.Vlan is { } vlan && !taken.TryAdd(vlan, subnet.Id))
                slips.Add(RuleCodes.VlanTwice, subnet.At, new($"subnet {subnet.Id} has the number {vlan}, and so has {taken[vlan]}", "each subnet has a number of its own, 1 to 4094", "Give one of the two another number."));
        }
    }

    private static void Kinds(AddressPlan plan, JobNames names, Slips slips)
    {
        var taken = new Dictionary<(string Kind, string Space), string>();
        foreach (var subnet in plan.Subnets)
        {
            foreach (var space in subnet.In)
            {
                if (!names.Spaces.ContainsKey(space))
                    slips.Unknown(RuleCodes.UnknownSpace, subnet.At, new("space", space, $"subnet {subnet.Id}"), names.Spaces.Keys);
            }

            foreach (var kind in subnet.For)
            {
                foreach (var space in subnet.In.Count == 0 ? [""] : subnet.In)
                {
                    if (!taken.TryAdd((kind, space), subnet.Id))
                        slips.Add(RuleCodes.KindTwice, subnet.At, new($"subnet {subnet.Id} is for {kind}, and so is {taken[(kind, space)]}", "a device belongs to one subnet", "Take the kind out of one of them, or say 'in' which spaces."));
                }
            }
        }
    }

    private static void Pattern(AddressPlan plan, Slips slips)
    {
        if (plan.Names is not { } pattern)
            return;
        var rest = pattern;
        foreach (var part in Parts)
            rest = rest.Replace($"{{{part}}}", "", StringComparison.Ordinal);
        var tellsApart = pattern.Contains("{number}", StringComparison.Ordinal) || pattern.Contains("{id}", StringComparison.Ordinal);
        if (rest.AsSpan().IndexOfAny('{', '}') < 0 && tellsApart)
            return;
        slips.Add(RuleCodes.NamePattern, plan.At, new($"the pattern for names is '{pattern}'", "it is made of {role}, {place}, {number} and {id}, with {number} or {id} in it", "Write it like '{role}-{place}-{number}'."));
    }
}
