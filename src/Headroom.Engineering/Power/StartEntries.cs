using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>Entries for the rush of current when a device is switched on, and for the least it must draw to be kept on.</summary>
internal static class StartEntries
{
    /// <summary>Adds the entries of one port that a class is in play on; none for passive ports, which ask for neither.</summary>
    public static void Add(List<LedgerEntry> entries, PoweredPort port, Policy policy)
    {
        if (port.GrantedClass is not { } cls || port.Feed.Type is not { } type || port.SourceVolts is not { } volts)
            return;
        if (port.Endpoint.Model.Power!.InputCapacitance is { } capacitance)
            entries.Add(Inrush(port, (capacitance.Value.Value, volts, cls), policy));
        if (port.Endpoint.Model.Power.LeastDraw is { } least)
            entries.Add(KeepAlive(port, (least.Value.Value, volts, Power.KeepAlive.Pulse(type, type, cls)), policy));
    }

    /// <summary>One unknown entry a model for what its catalogue entry leaves open.</summary>
    public static IEnumerable<LedgerEntry> NotKnown(IReadOnlyList<PoweredPort> ports) => ports
        .Where(port => port.Fault is PortFault.None && port.GrantedClass is not null && port.Endpoint.Model.Power is { InputCapacitance: null } or { LeastDraw: null })
        .Where(port => port.GrantedClass is not null)
        .GroupBy(port => port.Endpoint.Model.Id)
        .Select(group => Missing(group.First()));

    private static LedgerEntry Inrush(PoweredPort port, (double Farads, double Volts, int Class) at, Policy policy)
    {
        var amperes = StartUp.InrushAmperes(at.Class).Least;
        var milliseconds = 1000 * StartUp.ChargeSeconds(at.Farads, at.Volts, amperes);
        const double limit = 1000 * StartUp.DeviceInrushSeconds;
        var reserve = policy.ReserveOf("start");
        return new LedgerEntry
        {
            Discipline = PowerLedger.Discipline,
            Subject = port.Id,
            Quantity = "inrush",
            What = "time to charge its input",
            Unit = "ms",
            Kind = "start",
            Demand = milliseconds,
            Limit = limit,
            Reserve = reserve.Of(limit),
            Studied = Judge.Known(milliseconds, limit, reserve.Of(limit)),
            Story = new InrushStory(port, (at.Farads, at.Volts, amperes), reserve),
        };
    }

    private static LedgerEntry KeepAlive(PoweredPort port, (double Watts, double Volts, KeepAlivePulse Pulse) at, Policy policy)
    {
        var (needed, there) = (1000 * at.Pulse.Amperes, 1000 * at.Watts / at.Volts);
        var reserve = policy.ReserveOf("keep-alive");
        return new LedgerEntry
        {
            Discipline = PowerLedger.Discipline,
            Subject = port.Id,
            Quantity = "keep-alive",
            What = "current to stay on",
            Unit = "mA",
            Kind = "keep-alive",
            Sense = Sense.AtLeast,
            Demand = needed,
            Limit = there,
            Reserve = reserve.Of(there),
            Studied = Judge.Known(needed, there, reserve.Of(there)),
            Advice = needed > there ? ["keep it from sleeping that deep: a setting of the device, no cost"] : [],
            Story = new KeepAliveStory(port, (at.Watts, at.Volts, at.Pulse.Amperes), reserve),
        };
    }

    private static LedgerEntry Missing(PoweredPort port)
    {
        var model = port.Endpoint.Model;
        var capacitance = model.Power!.InputCapacitance is null;
        return new LedgerEntry
        {
            Id = capacitance ? $"power/{model.Id}/inrush" : $"power/{model.Id}/keep-alive",
            Discipline = PowerLedger.Discipline,
            Subject = model.Id,
            Quantity = capacitance ? "inrush" : "keep-alive",
            What = capacitance ? "time to charge its input" : "current to stay on",
            Unit = capacitance ? "ms" : "mA",
            Kind = capacitance ? "start" : "keep-alive",
            Sense = capacitance ? Sense.AtMost : Sense.AtLeast,
            Studied = Verdict.Unknown,
            Question = capacitance
                ? $"what is the input capacitance of {model.Id}? its maker says, or a start on one port of the switch shows it holds"
                : $"what does {model.Id} draw when it does least? the switch shows it at night",
            Story = new NotKnownStory(),
        };
    }
}
