using Headroom.Domain.Jobs;
using Headroom.Engineering.Readings;

namespace Headroom.Engineering.Power;

/// <summary>What the power study expects of readings: watts, volts and amperes at a port or device, ohms of a pair.</summary>
internal sealed class PowerExpectations : IExpectations
{
    // How far an ordinary draw of one device lies from its model's: common practice, no source.
    private const double DrawShare = 0.2;

    // Of runs: twisting and the wire's tolerance, as for the entries.
    private const double OhmsShare = 0.03;

    private readonly Dictionary<string, PoweredPort> _ports = [];
    private readonly Dictionary<string, SwitchPower> _switches = [];

    /// <summary>Makes every port findable by port, endpoint and drop.</summary>
    public PowerExpectations(PowerResult result)
    {
        foreach (var port in result.Ports)
        {
            _ports.TryAdd(port.Port.Ref.ToString(), port);
            _ports.TryAdd(port.Id, port);
            if (port.Endpoint.Endpoint.Drop is { } drop)
                _ports.TryAdd(drop, port);
        }

        foreach (var s in result.Switches)
            _switches[s.Switch.Id] = s;
    }

    /// <inheritdoc/>
    public Expectation? Of(Reading reading)
    {
        if (reading.What == "watts" && _switches.TryGetValue(reading.Where, out var s))
            return OfSwitch(reading, s);
        if (!_ports.TryGetValue(reading.Where, out var port))
            return null;
        var state = port.In(StateOf(reading) ?? PowerState.Typical);
        var worst = StateOf(reading) == port.Worst;
        return reading.What switch
        {
            "watts" => new($"power/{port.Id}/watts", state.PortWatts, DrawShare * state.PortWatts ?? 0, worst, IsLimit: false,
                "a busier device, another mode, or a longer or thinner run than written", "a quieter device or a mode that is off; look again at its most"),
            "volts" => new($"power/{port.Id}/volts", state.Point?.LoadVolts, VoltsSpread(port, state), worst, IsLimit: true,
                "a shorter or thicker run than written, or a device that draws less", "a longer, thinner, hotter or copper-clad run than written, a poor contact, or a device that draws more"),
            "amperes" => new($"power/{port.Id}/watts", state.Point?.Amperes, DrawShare * state.Point?.Amperes ?? 0, false, IsLimit: false,
                "a device that draws more, or a lower voltage than written", "a device that draws less"),
            "ohms" => new($"power/{port.Id}/volts", PairOhms(port), OhmsShare * PairOhms(port) ?? 0, false, IsLimit: false,
                "a longer, thinner, hotter or copper-clad run than written, or a poor contact: re-terminate and read each pair", "a shorter or thicker run than written"),
            _ => null,
        };
    }

    private static Expectation OfSwitch(Reading reading, SwitchPower s)
    {
        var state = StateOf(reading) ?? PowerState.Typical;
        var drawn = s.Counter.Served.Sum(port => port.In(state).PortWatts ?? double.NaN);
        var measured = s.Setting.ReservesBy == ReservesBy.Measured;
        return new($"power/{s.Switch.Id}/watts", double.IsNaN(drawn) ? null : drawn, double.IsNaN(drawn) ? 0 : DrawShare * drawn,
            measured && state == s.Worst.State, IsLimit: false,
            "more or busier devices than written", "devices that are off or quieter than their models");
    }

    private static PowerState? StateOf(Reading reading)
    {
        if (reading.While is not { } condition)
            return null;
        foreach (var state in DeviceDraws.States)
        {
            if (condition.Contains(DeviceDraws.Name(state), StringComparison.OrdinalIgnoreCase))
                return state;
        }

        return condition.Contains("restart", StringComparison.OrdinalIgnoreCase) ? PowerState.Start : null;
    }

    // A tester reads one pair out and back; cords are not in it, they hang on neither end then.
    private static double? PairOhms(PoweredPort port)
    {
        var sum = 0.0;
        foreach (var piece in port.Endpoint.Run?.Pieces.Where(piece => !piece.Cord) ?? [])
        {
            if (piece.Ohms is not { } ohms)
                return null;
            sum += 2 * ohms;
        }

        return port.Endpoint.Run is null ? null : sum;
    }

    private static double VoltsSpread(PoweredPort port, PortState state) =>
        state.Point is { } point && port.SourceVolts is { } volts ? (volts - point.LoadVolts) * (DrawShare + OhmsShare) + port.Feed.SpreadVolts : 0;
}
