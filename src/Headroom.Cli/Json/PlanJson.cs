using System.Globalization;
using System.Text.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Plans;

namespace Headroom.Cli.Json;

/// <summary>A plan as JSON: designs, what lost and why, the front of cost against sound against room.</summary>
internal static class PlanJson
{
    /// <summary>The name of the shape.</summary>
    public const string Format = "headroom-plan/1";

    /// <summary>Writes it.</summary>
    public static string Write(Plan plan) => JsonText.Of(json =>
    {
        json.WriteString("format", Format);
        json.WriteString("job", plan.Job);
        json.WriteString("on", plan.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteBoolean("mayDiffer", plan.MayDiffer);
        json.WriteNumber("studied", plan.Studied);
        json.Strings("assumed", plan.Assumed);
        json.Each("proposals", plan.Proposals, proposal => WriteProposal(json, proposal));
        json.Each("refused", plan.Refused, set =>
        {
            json.WriteString("why", set.Why);
            json.WriteString("bought", set.Bought);
            json.Amount("total", set.Total);
            json.WriteString("entry", set.Entry);
            json.WriteString("because", set.Because);
        });
        json.Each("front", plan.Front, point =>
        {
            json.WriteString("bought", point.Bought);
            json.Amount("total", point.Total);
            json.Number("loudest_dBA", point.Loudest);
            json.WriteNumber("freePorts", point.FreePorts);
            json.WriteNumber("freePoweredPorts", point.FreePowered);
        });
        json.Each("clashes", plan.Clashes, clash =>
        {
            json.WriteString("requirement", clash.Requirement);
            json.WriteString("relaxed", clash.Relaxed);
            json.Amount("total", clash.Total);
        });
    });

    /// <summary>An amount; null for what is not known.</summary>
    public static void Amount(this Utf8JsonWriter json, string key, decimal? amount)
    {
        if (amount is { } known)
            json.WriteNumber(key, known);
        else
            json.WriteNull(key);
    }

    private static void WriteProposal(Utf8JsonWriter json, Proposal proposal)
    {
        json.Strings("roles", proposal.Roles);
        json.WriteString("design", proposal.Design.Id);
        json.WriteString("bought", proposal.Bought);
        WriteCost(json, proposal.Cost);
        json.WriteStartObject("proof");
        json.WriteString("by", proposal.Proof.By);
        json.WriteBoolean("proved", proposal.Proof.Proved);
        json.Number("gap", proposal.Proof.Gap);
        json.WriteEndObject();
        json.WriteString("verdict", Words.Of(proposal.Ledger.Verdict));
        json.Counts(proposal.Ledger);
        json.WriteNumber("units", proposal.Units);
        json.WriteNumber("freePorts", proposal.FreePorts);
        json.WriteNumber("freePoweredPorts", proposal.FreePowered);
        json.Number("free_W", proposal.FreeWatts);
        json.Number("loudest_dBA", proposal.Loudest);
        json.Number("movedCords", proposal.Moved);
        json.Strings("settings", proposal.Settings);
        json.Strings("binding", proposal.Binding);
        json.Each("patch", proposal.Design.Patch, patch =>
        {
            json.WriteString("what", patch.What);
            json.WriteString("to", patch.To.ToString());
        });
    }

    private static void WriteCost(Utf8JsonWriter json, PlanCost cost)
    {
        json.WriteStartObject("cost");
        json.WriteString("currency", cost.Currency);
        json.WriteNumber("goods", cost.Goods);
        json.WriteNumber("labour", cost.Labour);
        json.WriteNumber("energy", cost.Energy);
        json.WriteNumber("swaps", cost.Swaps);
        json.WriteNumber("total", cost.Total);
        json.WriteEndObject();
    }
}
