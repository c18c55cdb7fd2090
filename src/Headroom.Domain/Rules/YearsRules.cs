using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>What is added over the years is a kind of endpoint, or a model of one.</summary>
internal static class YearsRules
{
    private static readonly string[] Kinds = ["phone", "access point", "camera", "door station", "radio", "switch", "other"];

    /// <summary>Checks the years of the policy.</summary>
    public static void Check(Policy policy, Catalogue catalogue, Slips slips)
    {
        foreach (var growth in policy.Years?.Devices ?? [])
        {
            if (!Kinds.Contains(growth.Name) && !catalogue.Endpoints.ContainsKey(growth.Name))
                slips.Unknown(RuleCodes.UnknownAdded, growth.At, new("kind of endpoint or model", growth.Name, "what is added in a year"), [.. Kinds, .. catalogue.Endpoints.Keys]);
        }
    }
}
