using Headroom.Domain.Catalogues;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Works out one endpoint on one port: what is granted, and where load and run settle in each state.</summary>
public static class PortSolver
{
    // The most any equipment of the standard may put on the pins (IEEE 802.3, Table 33-11, from memory).
    private const double StandardMostVolts = 57;

    /// <summary>Works out one endpoint.</summary>
    /// <param name="endpoint">An endpoint that takes power over the cable and hangs on a port.</param>
    /// <returns>All its figures.</returns>
    public static PoweredPort Solve(BoundEndpoint endpoint)
    {
        var power = endpoint.Model.Power ?? throw new ArgumentException($"{endpoint.Id} takes no power over the cable.", nameof(endpoint));
        var patch = endpoint.Port ?? throw new ArgumentException($"{endpoint.Id} is on no port.", nameof(endpoint));
        var feed = PortFeeds.Of(patch);
        return feed.Type is { } type ? Typed(endpoint, power, (feed, type))
            : feed.Passive is { } passive ? Passive(endpoint, power, (feed, passive))
            : Dark(endpoint, feed, PortFault.NoPower);
    }

    private static PoweredPort Typed(BoundEndpoint endpoint, PowerIntake power, (PortFeed Feed, PoeType Type) at)
    {
        if (power.Class is null && power.Passive is not null)
            return Dark(endpoint, at.Feed, PortFault.NotDetected);
        var granted = power.Class is { } asked ? ClassAssignment.Granted(PoeTypes.Of(at.Type).HighestClass, asked) : null;
        var dual = power.Dual && at.Type >= PoeType.Type3 && granted is >= 1 and <= 5;
        double? classWatts = granted is not { } cls ? null : dual ? 2 * PoeClasses.OfDual(cls).SourceWatts : PoeClasses.SourceWatts(cls);
        var pairs = granted is { } g && (dual || PoeClasses.FourPair(g)) ? 4 : 2;
        var volts = at.Feed.DeclaredVolts ?? (granted is { } c ? PoeClasses.LeastSourceVolts(c, at.Type) : PoeTypes.Of(at.Type).SourceVoltsMin);
        var loop = Loop(endpoint, pairs);
        return new PoweredPort
        {
            Endpoint = endpoint,
            Port = endpoint.Port!,
            Feed = at.Feed,
            AskedClass = power.Class,
            GrantedClass = granted,
            ClassWatts = classWatts,
            GrantWatts = Least(classWatts, at.Feed.LimitWatts),
            Pairs = pairs,
            SourceVolts = volts,
            LoopOhms = loop,
            LeastVolts = power.LeastVolts?.Value.Value ?? (granted is { } k ? PoeClasses.LeastDeviceVolts(k) : null),
            LeastVoltsWritten = power.LeastVolts,
            MostVolts = power.MostVolts?.Value.Value ?? StandardMostVolts,
            Fault = volts > (power.MostVolts?.Value.Value ?? StandardMostVolts) ? PortFault.TooManyVolts : PortFault.None,
            States = States(endpoint, (volts, loop), granted is { } n ? (n, at.Type) : null),
            Worst = WorstOf(endpoint),
        };
    }

    private static PoweredPort Passive(BoundEndpoint endpoint, PowerIntake power, (PortFeed Feed, PassiveOutput Output) at)
    {
        var volts = at.Output.Volts.Value.Value;
        var loop = Loop(endpoint, at.Output.Pairs ?? 2);
        var (least, most) = power.Passive is { } range
            ? (range.Value.Value - (range.PlusMinus ?? 0), range.Value.Value + (range.PlusMinus ?? 0))
            : (PassivePins.TurnOnVolts, power.MostVolts?.Value.Value ?? StandardMostVolts);
        return new PoweredPort
        {
            Endpoint = endpoint,
            Port = endpoint.Port!,
            Feed = at.Feed,
            AskedClass = power.Class,
            GrantWatts = Least(volts * at.Output.Amperes?.Value.Value, at.Feed.LimitWatts),
            Pairs = at.Output.Pairs ?? 2,
            SourceVolts = volts,
            LoopOhms = loop,
            LeastVolts = power.Passive is not null ? power.LeastVolts?.Value.Value ?? least : least,
            LeastVoltsWritten = power.Passive is null ? null : power.LeastVolts ?? power.Passive,
            MostVolts = most,
            Fault = volts > most ? PortFault.TooManyVolts : power.Passive is null && !PassivePins.StartsOn(volts, least) ? PortFault.NeverStarts : PortFault.None,
            States = States(endpoint, (volts, loop), null),
            Worst = WorstOf(endpoint),
        };
    }

    private static PoweredPort Dark(BoundEndpoint endpoint, PortFeed feed, PortFault fault) => new()
    {
        Endpoint = endpoint,
        Port = endpoint.Port!,
        Feed = feed,
        Fault = fault,
        AskedClass = endpoint.Model.Power!.Class,
        States = Drawn(endpoint),
        Worst = WorstOf(endpoint),
    };

    // Without a known run the port gives the device's watts and the worst loss that the class allows for.
    private static double? WorstRunWatts(double deviceWatts, (int Class, PoeType Type) granted) =>
        Reservation.ForClass(deviceWatts, granted.Class, granted.Type);

    private static PortState State(double? watts, (double Volts, double? Ohms) at, (int Class, PoeType Type)? granted)
    {
        if (watts is not { } drawn)
            return PortState.NotKnown;
        if (at.Ohms is not { } ohms)
            return new PortState(drawn, null, granted is { } worst ? WorstRunWatts(drawn, worst) : null);
        var point = ConstantPowerLoad.Solve(at.Volts, ohms, drawn);
        return new PortState(drawn, point, point?.SourceWatts ?? drawn);
    }

    private static PortState[] States(BoundEndpoint endpoint, (double Volts, double? Ohms) at, (int Class, PoeType Type)? granted)
    {
        var states = new PortState[DeviceDraws.States.Count];
        for (var i = 0; i < states.Length; i++)
            states[i] = State(DeviceDraws.Of(endpoint, (PowerState)i)?.Value.Value, at, granted);
        return states;
    }

    private static PortState[] Drawn(BoundEndpoint endpoint) =>
        [.. DeviceDraws.States.Select(state => DeviceDraws.Of(endpoint, state)?.Value.Value).Select(watts => new PortState(watts, null, watts))];

    private static double? Loop(BoundEndpoint endpoint, int pairs) =>
        endpoint.PowerRun?.ConductorOhms is { } conductor ? PairLoop.PowerLoopOhms(conductor, metres: 1, pairs) : null;

    private static PowerState WorstOf(BoundEndpoint endpoint)
    {
        var (worst, most) = (PowerState.Typical, double.NegativeInfinity);
        for (var state = PowerState.Typical; state <= PowerState.Start; state++)
        {
            if (DeviceDraws.Of(endpoint, state)?.Value.Value is { } watts && watts > most)
                (worst, most) = (state, watts);
        }

        return worst;
    }

    private static double? Least(double? left, double? right) =>
        left is null ? right : right is null ? left : Math.Min(left.Value, right.Value);
}
