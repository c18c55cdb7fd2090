using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Power;

/// <summary>Entries for devices that get nothing from their port, or must not be on it.</summary>
internal static class FaultEntries
{
    /// <summary>The entry of a port with a fault.</summary>
    public static LedgerEntry Of(PoweredPort port, IReadOnlyList<Caution> cautions) => port.Fault switch
    {
        PortFault.TooManyVolts => MostVolts(port, cautions),
        PortFault.NeverStarts => NeverStarts(port, cautions),
        _ => NoPower(port, cautions),
    };

    /// <summary>The entry for the most volts a device stands.</summary>
    public static LedgerEntry MostVolts(PoweredPort port, IReadOnlyList<Caution> cautions)
    {
        var verdict = Judge.Of(port.SourceVolts, port.MostVolts, Domain.Jobs.Reserve.Nothing);
        return new()
        {
            Id = $"power/{port.Id}/most-volts",
            Discipline = PowerLedger.Discipline,
            Subject = port.Id,
            Quantity = "most-volts",
            What = "most volts it stands",
            Unit = "V",
            Kind = "volts",
            Demand = port.SourceVolts,
            Limit = port.MostVolts,
            Reserve = port.MostVolts is null ? null : 0,
            Studied = verdict,
            Cautions = cautions,
            Advice = verdict == Verdict.Short ? [$"take it off {port.Port.Ref} before power is switched on; give it a source of at most {Words.Of(port.MostVolts!.Value)} V"] : [],
            Story = new FaultStory(port.Port, port.Id, port.Fault),
        };
    }

    /// <summary>Entries for ports whose passive voltage meets something not meant for it, or nothing known.</summary>
    public static IEnumerable<LedgerEntry> OfLivePins(IReadOnlyList<LivePin> pins) => pins.Select(pin => new LedgerEntry
    {
        Id = $"power/{pin.Endpoint?.Id ?? pin.Port.What}/pins",
        Discipline = PowerLedger.Discipline,
        Subject = pin.Endpoint?.Id ?? pin.Port.What,
        Quantity = "pins",
        What = pin.Endpoint is null ? "volts always on its pins" : "volts on the wrong pins",
        Unit = "V",
        Kind = "volts",
        Demand = pin.Volts,
        Limit = pin.Endpoint is null ? null : 0,
        Reserve = pin.Endpoint is null ? null : 0,
        Studied = pin.Endpoint is null ? Verdict.Unknown : Verdict.Short,
        Question = pin.Endpoint is null ? $"what hangs on {pin.Port.What}? {pin.Port.Ref} puts {Words.Of(pin.Volts)} V on it all the time" : null,
        Cautions = [CautionTable.AlwaysOn],
        Advice = pin.Endpoint is null ? [] : [$"move {pin.Endpoint.Id} to an ordinary port, or switch the voltage of {pin.Port.Ref} off"],
        Story = new FaultStory(pin.Port, pin.Endpoint?.Id ?? pin.Port.What, PortFault.NotMeantForVolts),
    });

    /// <summary>One entry for all endpoints of a model for which no powered port is left.</summary>
    public static IEnumerable<LedgerEntry> OfUnserved(PowerResult result)
    {
        foreach (var group in result.Unserved.GroupBy(endpoint => endpoint.Model.Id))
        {
            var all = result.Bound.Endpoints.Count(endpoint => endpoint.Model.Id == group.Key);
            var missing = group.Count();
            yield return new LedgerEntry
            {
                Id = $"power/{group.Key}/ports",
                Discipline = PowerLedger.Discipline,
                Subject = group.Key,
                Quantity = "ports",
                What = $"powered ports for all {group.Key}",
                Unit = "ports",
                Kind = "ports",
                Demand = all,
                Limit = all - missing,
                Reserve = 0,
                Studied = Verdict.Short,
                Advice = ["add a powered port: a larger switch, a second one, or a midspan"],
                Story = new UnservedStory([.. group.Select(endpoint => endpoint.Id)]),
            };
        }
    }

    private static LedgerEntry NeverStarts(PoweredPort port, IReadOnlyList<Caution> cautions) => new()
    {
        Id = $"power/{port.Id}/start-volts",
        Discipline = PowerLedger.Discipline,
        Subject = port.Id,
        Quantity = "start-volts",
        What = "volts to start at all",
        Unit = "V",
        Kind = "volts",
        Sense = Sense.AtLeast,
        Demand = port.LeastVolts,
        Limit = port.SourceVolts,
        Reserve = 0,
        Studied = Verdict.Short,
        Cautions = cautions,
        Advice = Elsewhere(port),
        Story = new FaultStory(port.Port, port.Id, port.Fault),
    };

    private static LedgerEntry NoPower(PoweredPort port, IReadOnlyList<Caution> cautions) => new()
    {
        Id = $"power/{port.Id}/watts",
        Discipline = PowerLedger.Discipline,
        Subject = port.Id,
        Quantity = "watts",
        What = port.Fault == PortFault.NotDetected ? "port watts: unrecognised" : "port watts: gives none",
        Unit = "W",
        Kind = "port power",
        Demand = port.In(port.Worst).PortWatts,
        Limit = 0,
        Reserve = 0,
        Studied = Verdict.Short,
        Cautions = cautions,
        Advice = Elsewhere(port),
        Story = new FaultStory(port.Port, port.Id, port.Fault),
    };

    private static List<string> Elsewhere(PoweredPort port)
    {
        var advice = new List<string>();
        var (s, power) = (port.Port.Switch, port.Endpoint.Model.Power!);
        if (port.Fault == PortFault.NeverStarts && s is not null && s.PortGroupOf(port.Port.Port) is { Poe: not null, Passive.AlwaysOn: false })
            advice.Add($"switch the passive voltage of {port.Port.Ref} off: the port then looks for a class before it gives power; no cost");
        if (port.Fault == PortFault.NotDetected && s?.PortGroupOf(port.Port.Port)?.Passive is { } own)
            advice.Add($"switch {port.Port.Ref} to its passive {Words.Of(own.Volts.Value.Value)} V, if the device takes that: its plate says");
        var type = power.Class is { } cls ? s?.Model.Ports.FirstOrDefault(g => g.Poe is { } t && PoeTypes.Of(t).HighestClass >= cls) : null;
        if (type is not null)
            advice.Add($"move {port.Id} to one of the ports {type.First}-{type.Last} of {s!.Id}");
        advice.Add((advice.Count > 0 ? "or " : "") + (power.Class is { } c
            ? $"give {port.Id} an injector for class {c}"
            : $"give {port.Id} the injector its maker names ({power.Passive?.Written ?? "passive"})"));
        return advice;
    }
}
