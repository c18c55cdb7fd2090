using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Entries for the volts that reach a device.</summary>
internal static class VoltsEntries
{
    // Conductors are 1 to 3 % longer than their cable through twisting, and wire has its own tolerance: common practice, no source.
    private const double OhmsSpread = 0.03;

    // Made once: thousands of entries have the same.
    private static readonly string[] What = [.. DeviceDraws.States.Select(state => $"far-end volts, {PowerWords.Brief(state)}")];

    private const string NotPatched = "not patched: a free port that suits was taken";

    private static readonly string BothCords = $"cords not written: {Words.Of(RunBinder.AssumedCordMetres)} m of {Words.Of(RunBinder.AssumedCordAwg)} AWG taken";

    private static readonly string[] OnlyCords = [BothCords];

    private static readonly string OneCord = $"one cord not written: {Words.Of(RunBinder.AssumedCordMetres / 2)} m of {Words.Of(RunBinder.AssumedCordAwg)} AWG taken";

    private static readonly string NoTemperature = $"no temperature written: {Words.Of(RunBinder.AssumedCelsius)} °C taken";

    /// <summary>The entry of one port; null when its run is not known at all, for which one entry stands for all alike.</summary>
    public static LedgerEntry? Of(PoweredPort port, IReadOnlyList<Caution> cautions, Policy policy)
    {
        if (port.Endpoint.PowerRun is null)
            return null;
        var state = port.In(port.Worst);
        var reserve = policy.ReserveOf("volts");
        var question = port.Endpoint.PowerRun.Question ?? DrawQuestion(port) ?? (port.LeastVolts is null ? ClassQuestion(port) : null);
        var nowhere = port.LoopOhms is not null && state.DeviceWatts is not null && state.Point is null;
        double? there = state.Point?.LoadVolts;
        var verdict = nowhere ? Verdict.Short : Judge.Of(port.LeastVolts, there, reserve, question is null ? null : new KnownParts(0, 1));
        return new LedgerEntry
        {
            Discipline = PowerLedger.Discipline,
            Subject = port.Id,
            Quantity = "volts",
            What = nowhere ? "far-end volts: none" : What[(int)port.Worst],
            Unit = "V",
            Kind = "volts",
            Sense = Sense.AtLeast,
            Demand = port.LeastVolts,
            Limit = there,
            Reserve = there is { } v ? reserve.Of(v) : null,
            Studied = verdict,
            PlusMinus = Spread(port),
            Question = verdict == Verdict.Unknown ? question : null,
            Cautions = cautions,
            Assumed = Assumed(port),
            Advice = verdict is Verdict.Short or Verdict.Tight ? new LateList<string>(() => VoltsAdvice.Of(port, reserve)) : [],
            Story = new VoltsStory(port, reserve),
        };
    }

    /// <summary>One entry for all counted or loose endpoints on one unit whose runs nobody has surveyed.</summary>
    public static IEnumerable<LedgerEntry> WithoutRun(IReadOnlyList<PoweredPort> ports) => ports
        .Where(port => port.Endpoint.PowerRun is null && port.Fault is PortFault.None)
        .GroupBy(port => (Name: port.Endpoint.Endpoint.CountedAs ?? port.Id, port.Endpoint.Endpoint.Near))
        .Select(group => RunQuestion([.. group], group.Key.Near));

    /// <summary>What must be found out about a device's draw; null when its peak is known.</summary>
    public static string? DrawQuestion(PoweredPort port) =>
        DeviceDraws.Of(port.Endpoint, PowerState.Peak) is null ? $"what does {port.Endpoint.Model.Id} draw at its most? its plate or its maker says" : null;

    /// <summary>What must be found out about a device's class.</summary>
    public static string ClassQuestion(PoweredPort port) => $"which class does {port.Endpoint.Model.Id} ask for? its plate or the switch says";

    private static LedgerEntry RunQuestion(List<PoweredPort> ports, string? near)
    {
        var name = ports.Count == 1 ? ports[0].Id : $"{ports[0].Id}..{ports[^1].Id}";
        var far = near is null ? "" : $" to {near}";
        return new LedgerEntry
        {
            Id = $"power/{name}/volts",
            Discipline = PowerLedger.Discipline,
            Subject = name,
            Quantity = "volts",
            What = "far-end volts",
            Unit = "V",
            Kind = "volts",
            Sense = Sense.AtLeast,
            Demand = ports[0].LeastVolts,
            Studied = Verdict.Unknown,
            Question = $"how long {(ports.Count == 1 ? "is the run" : "are the runs")}{far} and of which cable? survey {(ports.Count == 1 ? "the drop" : "their drops")}",
            Story = new VoltsStory(ports[0], Reserve.Nothing),
        };
    }

    // The commonest case, cords that nobody wrote and nothing else, has one list for all.
    private static IReadOnlyList<string> Assumed(PoweredPort port)
    {
        var pieces = port.Endpoint.PowerRun!.Pieces;
        var common = pieces.Length == 2 && pieces[0].Air.Written is not null && pieces[1].IsAssumed && !port.Port.Assumed
            && (port.Feed.Type is null || port.Feed.DeclaredVolts is not null);
        return common ? OnlyCords : Assumptions(port);
    }

    private static List<string> Assumptions(PoweredPort port)
    {
        var assumed = new List<string>();
        foreach (var piece in port.Endpoint.PowerRun!.Pieces)
        {
            if (piece.Cord && piece.IsAssumed)
                assumed.Add(piece.Metres == RunBinder.AssumedCordMetres ? BothCords : OneCord);
            else if (!piece.Cord && piece.Air.Written is null && !assumed.Contains(NoTemperature))
                assumed.Add(NoTemperature);
        }

        if (port.Feed.Type is not null && port.Feed.DeclaredVolts is null)
            assumed.Add($"port voltage not declared: the standard's least, {Words.Of(port.SourceVolts!.Value)} V, taken");
        if (port.Port.Assumed)
            assumed.Add(NotPatched);
        return assumed;
    }

    // Each input moved by its own half interval, the effects added as squares (ISO/IEC Guide 98-3, section 5).
    private static double? Spread(PoweredPort port)
    {
        if (port.In(port.Worst).Point is not { } point || port.LoopOhms is not { } ohms)
            return null;
        var watts = point.LoadVolts * point.Amperes;
        var byOhms = point.Amperes * ohms * OhmsSpread;
        var byLength = port.Endpoint.PowerRun!.Pieces.Sum(piece => piece.SpreadMetres * (piece.OhmsPerMetre ?? 0)) * 2 / port.Pairs * point.Amperes;
        var byVolts = port.Feed.SpreadVolts;
        var byWatts = (DeviceDraws.Of(port.Endpoint, port.Worst)?.PlusMinus ?? 0) / point.LoadVolts * ohms;
        // Near the end of what the run can carry the voltage falls faster than the resistance rises: dV/dx grows by 1 / (1 - R P / V²).
        var gain = 1 / Math.Max(0.05, 1 - ohms * watts / (point.LoadVolts * point.LoadVolts));
        return gain * Math.Sqrt(byOhms * byOhms + byLength * byLength + byVolts * byVolts + byWatts * byWatts);
    }
}
