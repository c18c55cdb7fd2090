using Headroom.Domain.Catalogues;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Traffic;

/// <summary>Tells what a mix of devices asks at a busy moment.</summary>
internal static class DemandWorking
{
    /// <summary>Formula of all demands.</summary>
    public const string Formula = "streams at their full rate + calls at once · 0.0968 Mb/s + active users · their rate; calls by Engset, users by the binomial quantile";

    /// <summary>Source of all demands.</summary>
    public const string Source = "Engset and binomial distributions (textbooks); a call as ITU-T G.711 in packets of 20 ms on a tagged frame (IEEE 802.3, RFC 3550); the certainty is common practice, no source";

    /// <summary>The inputs: one row for each kind of figures.</summary>
    public static void Inputs(List<WorkingInput> inputs, TrafficResult result, TrafficMix mix, bool down)
    {
        foreach (var (figures, count) in mix.Counts.OrderBy(pair => result.NameOf(pair.Key), StringComparer.Ordinal))
        {
            var name = result.NameOf(figures);
            if (figures.CallShare is { } share)
                inputs.Add(new($"{count} x {name}, share of the busy hour on the telephone", 100 * share.Value.Value, "%", Origins.Of(share)));
            if (figures.Users is { } users && (down ? figures.Down : figures.Up) is { } rate)
            {
                inputs.Add(new($"{count} x {name}, users in all", users * count, "", Origins.Of(rate.Origin, figures.At)));
                inputs.Add(new($"{count} x {name}, share active", 100 * (figures.ActiveShare?.Value.Value ?? 1), "%", figures.ActiveShare is null ? "not written: all at once" : Origins.Of(figures.ActiveShare)));
                inputs.Add(new($"{count} x {name}, rate of an active one", rate.Value.Value / 1e6, "Mb/s", Origins.Of(rate)));
            }
        }
    }

    /// <summary>The steps from the inputs to the demand.</summary>
    public static void Steps(List<WorkingStep> steps, TrafficResult result, TrafficMix mix, (TrafficDemand Demand, bool Down) of)
    {
        var streams = of.Down ? of.Demand.StreamDown : of.Demand.StreamUp;
        if (streams > 0)
            steps.Add(new("streams", "each at its full rate", streams / 1e6, "Mb/s"));
        var (phones, erlangs) = TrafficReckoner.Offered(mix);
        if (phones > 0)
        {
            steps.Add(new("calls at once", $"{phones} telephones offer {Words.Of(erlangs)} E; at most {Words.Of(100 * result.Reckoner.CallsLost)} % of calls lost", of.Demand.Calls, ""));
            steps.Add(new("calls", $"{of.Demand.Calls} · {Words.Of(VoiceRate.OrdinaryCall / 1e6)}", of.Demand.Calls * VoiceRate.OrdinaryCall / 1e6, "Mb/s"));
        }

        foreach (var (figures, count) in mix.Counts.OrderBy(pair => result.NameOf(pair.Key), StringComparer.Ordinal))
        {
            if (figures.Users is not > 0 || (of.Down ? figures.Down : figures.Up) is not { } rate)
                continue;
            var active = result.Reckoner.Active(figures, count);
            steps.Add(new($"{result.NameOf(figures)}, active at once", $"no more in {Words.Of(100 * TrafficReckoner.Certainty)} % of moments: {active} · {Words.Of(rate.Value.Value / 1e6)}", active * rate.Value.Value / 1e6, "Mb/s"));
        }

        steps.Add(new("asked", "the sum", (of.Down ? of.Demand.Down : of.Demand.Up) / 1e6, "Mb/s"));
    }

    /// <summary>A mix of one device.</summary>
    public static TrafficMix One(TrafficFigures? figures)
    {
        var mix = new TrafficMix();
        mix.Add(figures);
        return mix;
    }
}
