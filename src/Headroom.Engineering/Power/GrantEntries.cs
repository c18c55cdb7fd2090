using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>Entries for what a port grants against what its device takes.</summary>
internal static class GrantEntries
{
    /// <summary>The entry of one port.</summary>
    public static LedgerEntry Of(PoweredPort port, IReadOnlyList<Caution> cautions, Policy policy)
    {
        var state = port.In(port.Worst);
        var dark = port.Demoted && port.Endpoint.Model.Power!.WhenDemoted == WhenDemoted.StaysDark;
        var limit = dark ? 0 : port.GrantWatts;
        var reserve = policy.ReserveOf("port power");
        var question = VoltsEntries.DrawQuestion(port) ?? (port.GrantWatts is null ? GrantQuestion(port) : state.PortWatts is null ? port.Endpoint.PowerRun?.Question ?? $"how long is the run to {port.Id}?" : null);
        var verdict = dark ? Verdict.Short : Judge.Of(state.PortWatts, limit, reserve, question is null ? null : new KnownParts(0, 1));
        return new LedgerEntry
        {
            Discipline = PowerLedger.Discipline,
            Subject = port.Id,
            Quantity = "watts",
            What = What(port, dark),
            Unit = "W",
            Kind = "port power",
            Demand = state.PortWatts,
            Limit = limit,
            Reserve = limit is { } l ? reserve.Of(l) : null,
            Studied = verdict,
            Question = verdict == Verdict.Unknown ? question : null,
            Cautions = port.Feed.Passive is null ? [] : cautions,
            Assumed = port.LoopOhms is null && state.PortWatts is not null ? AssumedRun : [],
            Advice = verdict == Verdict.Short ? Advice(port) : [],
            Story = new GrantStory(port, reserve),
        };
    }

    // Made once: thousands of entries have the same.
    private static readonly string[] Plain = [.. DeviceDraws.States.Select(state => $"port watts, {PowerWords.Brief(state)}")];

    private static readonly string[] AssumedRun = ["run not known: the worst loss that the class allows for was taken"];

    private static string GrantQuestion(PoweredPort port) => port.Feed.Passive is not null
        ? $"how many amperes gives {port.Port.Ref}? its plate says"
        : VoltsEntries.ClassQuestion(port);

    private static string What(PoweredPort port, bool dark) =>
        dark ? $"port watts: class {port.GrantedClass}, dark"
        : port.Demoted ? $"port watts, class {port.AskedClass} as {port.GrantedClass}"
        : Plain[(int)port.Worst];

    private static List<string> Advice(PoweredPort port)
    {
        var advice = new List<string>();
        var needed = port.In(port.Worst).PortWatts ?? 0;
        if (port.Feed.LimitWatts is { } limit && limit < needed && (port.ClassWatts ?? 0) >= needed)
            advice.Add($"raise the limit of {port.Port.Ref} to {Words.Of(Math.Ceiling(needed * 2) / 2)} W: a setting, no cost");
        if (port.Port.Switch is { } s && port.AskedClass is { } cls)
        {
            var better = s.Model.Ports.Where(g => g.Poe is { } type && PoeTypes.Of(type).HighestClass >= cls).Select(g => $"{g.First}-{g.Last}").ToList();
            advice.Add(better.Count > 0 ? $"move it to port {Words.List(better)} of {s.Id}, which can grant class {cls}" : $"give it an injector or midspan for class {cls}, or a switch with such ports");
        }

        return advice;
    }
}
