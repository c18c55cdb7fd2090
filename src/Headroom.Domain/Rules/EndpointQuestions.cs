using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>What is odd about the endpoints.</summary>
internal static class EndpointQuestions
{
    private const int DigitsOfAnAddress = 12;

    /// <summary>Asks about hardware addresses and about models written in two ways.</summary>
    public static void Ask(JobNames names, Slips slips)
    {
        var owners = new Dictionary<string, string>();
        foreach (var endpoint in names.Job.Survey.Endpoints)
            Hardware(endpoint, owners, slips);
        Counted(names.Job.Survey.Endpoints, slips);
    }

    /// <summary>Asks about endpoints whose drop is not patched, once for all of them. A design that patches nothing has not got that far.</summary>
    public static void AskPatched(DesignView chosen, JobNames names, Slips slips)
    {
        if (chosen.Whole.Patch.Count == 0)
            return;
        var patched = chosen.Whole.Patch.Select(p => p.What).ToHashSet();
        var dark = names.Job.Survey.Endpoints
            .Where(e => e.Drop is { } drop && names.Drops.ContainsKey(drop) && !patched.Contains(drop) && !patched.Contains(e.Id)).ToList();
        if (dark.Count == 0)
            return;
        var said = new Said(
            $"design {chosen.Whole.Id} does not patch {Slips.Some(dark.ConvertAll(e => $"{e.Drop} ({e.Id})"))}",
            "the drop of an endpoint is usually patched",
            "Add it to the patch, unless the endpoint is to stay dark.");
        slips.Add(RuleCodes.NotPatched, dark[0].At, said);
    }

    private static void Hardware(Endpoint endpoint, Dictionary<string, string> owners, Slips slips)
    {
        if (endpoint.Hardware is not { } written)
            return;
        if (Digits(written) is not { } address)
        {
            var odd = new Said(
                $"the hardware address of {endpoint.Id} is '{written}'",
                "it is six pairs of hexadecimal digits, such as 02:00:5e:10:00:01",
                "Read it again from the label.");
            slips.Add(RuleCodes.HardwareOdd, endpoint.At, odd);
        }
        else if (!owners.TryAdd(address, endpoint.Id))
        {
            var twice = new Said(
                $"{endpoint.Id} has the hardware address {written}, and so has {owners[address]}",
                "no two devices have the same",
                "Read both again from the labels.");
            slips.Add(RuleCodes.HardwareTwice, endpoint.At, twice);
        }
    }

    // As people write it: 02:00:5e:10:00:01, 02-00-5E-10-00-01, 0200.5e10.0001 or 02005e100001.
    private static string? Digits(string written)
    {
        var groups = written.Trim().Split(':', '-', '.');
        var digits = string.Concat(groups);
        var even = groups.Length is 1 or 3 or 6 && groups.All(g => g.Length == DigitsOfAnAddress / groups.Length);
        return even && digits.All(char.IsAsciiHexDigit) ? digits.ToUpperInvariant() : null;
    }

    private static void Counted(IReadOnlyList<Endpoint> endpoints, Slips slips)
    {
        var named = new Dictionary<string, string>();
        foreach (var endpoint in endpoints.Where(e => e.CountedAs is null))
            named.TryAdd(endpoint.Model, endpoint.Id);
        foreach (var group in endpoints.Where(e => e.CountedAs is not null && named.ContainsKey(e.Model)))
        {
            var said = new Said(
                $"'{group.CountedAs}' counts endpoints of a model of which {named[group.Model]} is written by itself",
                "a model is usually counted or written one by one",
                "Are those written by themselves counted twice?");
            slips.Add(RuleCodes.CountedAndNamed, group.At, said);
        }
    }
}
