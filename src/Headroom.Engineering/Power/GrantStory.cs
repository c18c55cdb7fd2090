using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>Tells what a port grants and what its device takes of it.</summary>
internal sealed class GrantStory(PoweredPort port, Reserve reserve) : IEntryStory
{
    /// <inheritdoc/>
    public string Say(LedgerEntry entry)
    {
        if (entry.Question is { } question)
            return $"{port.Id}: {question}.";
        var takes = $"{port.Id} takes {Words.Of(entry.Demand ?? 0)} W at {port.Port.Ref} {PowerWords.OfDevice(port.Worst)}";
        return entry.Limit == 0 && port.Demoted
            ? $"{port.Id} asks for class {port.AskedClass}, {port.Port.Ref} grants class {port.GrantedClass}, and with that it does not start."
            : port.Demoted
                ? $"{takes}, but {port.Port.Ref} grants class {port.GrantedClass} ({Words.Of(entry.Limit ?? 0)} W) where it asks for class {port.AskedClass}."
                : $"{takes}, which gives {Words.Of(entry.Limit ?? 0)} W ({PowerWords.Ask(port)}).";
    }

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry)
    {
        var state = port.In(port.Worst);
        var inputs = new List<WorkingInput>
        {
            new($"P of the device, {PowerWords.OfDevice(port.Worst)}", state.DeviceWatts, "W", Origins.Of(DeviceDraws.Of(port.Endpoint, port.Worst))),
            new("class asked", port.AskedClass, "", port.Endpoint.Model.Id),
            new("class granted", port.GrantedClass, "", port.Feed.Type is { } type ? $"port of {port.Port.Ref}, Type {(int)type + 1}" : "no class in play"),
            new("watts of that class at the port", port.ClassWatts, "W", "standard"),
            new("limit set for the port", port.Feed.LimitWatts, "W", port.Feed.LimitWatts is null ? "none set" : port.Feed.LimitOrigin),
        };
        var steps = new List<WorkingStep>();
        if (state.Point is { } point)
            steps.Add(new("lost in the run", $"{Words.Of(point.Amperes)}² A² · {Words.Of(port.LoopOhms!.Value)} Ω", point.LostWatts, "W"));
        steps.Add(new("watts at the port", state.Point is null ? "the device and the worst run of its class" : "device and loss", state.PortWatts, "W"));
        steps.Add(new("the port gives", port.Feed.Passive is null ? "the least of class and limit" : "its volts times its amperes", port.GrantWatts, "W"));
        foreach (var s in DeviceDraws.States)
            steps.Add(new($"  {PowerWords.OfDevice(s)}", "at the port", port.In(s).PortWatts, "W"));
        return new Working(
            "watts at the port = watts of the device + I² R", inputs, steps,
            "IEEE Std 802.3, Tables 33-1 and 145-11 to 145-13 (classes and what a port grants), from memory");
    }

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (entry.Limit is not { } limit || limit <= 0 || port.SourceVolts is not { } volts || port.LoopOhms is not { } ohms || port.In(port.Worst).DeviceWatts is not { } watts)
            return [];
        var kept = limit - reserve.Of(limit);
        return [new("draw of the device", "W", watts, DeviceWatts(limit, (volts, ohms)), DeviceWatts(kept, (volts, ohms)))];
    }

    // What is left for the device when the port gives all it may: P = P_port − (P_port / V)² R.
    private static double? DeviceWatts(double portWatts, (double Volts, double Ohms) at)
    {
        var amperes = portWatts / at.Volts;
        var watts = portWatts - amperes * amperes * at.Ohms;
        return amperes * at.Ohms > at.Volts / 2 || watts < 0 ? null : watts;
    }
}
