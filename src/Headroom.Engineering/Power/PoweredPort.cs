using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Power;

/// <summary>One endpoint on one port; the ledger's workings are written from these figures and no others.</summary>
public sealed record PoweredPort
{
    // One for every endpoint: not-a-number stands for "not known" inside, in half the room.
    private readonly double _classWatts = double.NaN;
    private readonly double _grantWatts = double.NaN;
    private readonly double _sourceVolts = double.NaN;
    private readonly double _loopOhms = double.NaN;
    private readonly double _leastVolts = double.NaN;
    private readonly double _mostVolts = double.NaN;

    /// <summary>The endpoint.</summary>
    public required BoundEndpoint Endpoint { get; init; }

    /// <summary>The port.</summary>
    public required BoundPatch Port { get; init; }

    /// <summary>What the port puts on the cable.</summary>
    public required PortFeed Feed { get; init; }

    /// <summary>Why the endpoint gets nothing, or must not be there.</summary>
    public PortFault Fault { get; init; }

    /// <summary>The class the endpoint asks for; null when it has none or it is not known.</summary>
    public int? AskedClass { get; init; }

    /// <summary>The class the port grants; null when no class is in play.</summary>
    public int? GrantedClass { get; init; }

    /// <summary>The watts that class takes at the port [W]; null when no class is in play.</summary>
    public double? ClassWatts { get => Known(_classWatts); init => _classWatts = value ?? double.NaN; }

    /// <summary>The most the port gives this endpoint [W]: class, port limit or passive output; null when not known.</summary>
    public double? GrantWatts { get => Known(_grantWatts); init => _grantWatts = value ?? double.NaN; }

    /// <summary>On how many pairs the power flows, 2 or 4.</summary>
    public int Pairs { get; init; } = 2;

    /// <summary>The voltage at the port [V]; null when there is none.</summary>
    public double? SourceVolts { get => Known(_sourceVolts); init => _sourceVolts = value ?? double.NaN; }

    /// <summary>Resistance of the powering circuit, out and back [Ω]; null when the run is not known.</summary>
    public double? LoopOhms { get => Known(_loopOhms); init => _loopOhms = value ?? double.NaN; }

    /// <summary>The least voltage the endpoint needs while it runs [V]; null when not known.</summary>
    public double? LeastVolts { get => Known(_leastVolts); init => _leastVolts = value ?? double.NaN; }

    /// <summary>That need as written [V]; null when it was taken from a standard.</summary>
    public Given<Volts>? LeastVoltsWritten { get; init; }

    /// <summary>Where that need comes from, in words.</summary>
    public string LeastVoltsOrigin =>
        LeastVoltsWritten is not null ? Origins.Of(LeastVoltsWritten)
        : LeastVolts is null ? ""
        : Feed.Passive is not null ? "standard, turn-on of a device with a class"
        : $"standard, class {GrantedClass}";

    /// <summary>The most voltage the endpoint stands [V]; null when not known.</summary>
    public double? MostVolts { get => Known(_mostVolts); init => _mostVolts = value ?? double.NaN; }

    /// <summary>The port in each state, in the order of <see cref="PowerState"/>.</summary>
    public required PortState[] States { get; init; }

    /// <summary>The state of these in which the endpoint draws most; <see cref="PowerState.Typical"/> when no draw is known.</summary>
    public PowerState Worst { get; init; }

    /// <summary>True when the port grants a lower class than the endpoint asks for.</summary>
    public bool Demoted => GrantedClass is { } granted && AskedClass is { } asked && ClassAssignment.IsDemoted(granted, asked);

    /// <summary>The endpoint's id.</summary>
    public string Id => Endpoint.Id;

    /// <summary>The port in a state.</summary>
    /// <param name="state">The state.</param>
    /// <returns>Its figures.</returns>
    public PortState In(PowerState state) => States[(int)state];

    private static double? Known(double value) => double.IsNaN(value) ? null : value;
}
