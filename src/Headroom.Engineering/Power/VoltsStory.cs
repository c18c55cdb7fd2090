using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Power;

/// <summary>Tells how many volts reach a device, and up to where that holds.</summary>
internal sealed class VoltsStory(PoweredPort port, Reserve reserve) : IEntryStory
{
    private const string Formula = "V_far = (V + √(V² − 4 R P)) / 2, R = Σ r·L over the pieces on 2 pairs, half of it on 4";

    private const string Source =
        "constant-power load behind a resistance, the higher root (circuit theory); classes: IEEE Std 802.3, clauses 33 and 145; copper: IEC 60028, 0.393 % per K; gauges: ASTM B258";

    /// <summary>The least volts that keep the reserve.</summary>
    public static double Wanted(double leastVolts, Reserve reserve) =>
        reserve.Amount is { } amount ? leastVolts + amount : leastVolts / (1 - Math.Min(0.99, reserve.Share ?? 0));

    /// <summary>The longest that a piece may be for a voltage to be kept at the device.</summary>
    public static double? LongestMetres(PoweredPort port, BoundPiece piece, double leastVolts)
    {
        if (SpareConductorOhms(port, leastVolts) is not { } spare || piece.OhmsPerMetre is not { } perMetre || piece.Metres is not { } metres)
            return null;
        var longest = metres + spare / perMetre;
        return longest >= 0 ? longest : null;
    }

    /// <inheritdoc/>
    public string Say(LedgerEntry entry)
    {
        var what = $"{port.Id} needs {(port.LeastVolts is { } least ? Words.Of(least, "V") : "volts nobody knows")}";
        if (entry.Question is { } question)
            return $"{entry.Subject}: {question}.";
        if (port.In(port.Worst).Point is not { } point)
            return $"{what}, and no voltage settles on its run: {Words.Of(port.In(port.Worst).DeviceWatts ?? 0)} W are more than the run can carry ({Words.Of(Most())} W).";
        var loop = entry.Studied == Verdict.Short && port.Worst == PowerState.Start ? ", so that it restarts again and again" : "";
        return $"{what} and gets {Words.Of(point.LoadVolts)} V {PowerWords.OfDevice(port.Worst)} over {Run()}{loop}.";
    }

    /// <inheritdoc/>
    public Working Work(LedgerEntry entry)
    {
        var state = port.In(port.Worst);
        var inputs = new List<WorkingInput>
        {
            new("V at the port", port.SourceVolts, "V", port.Feed.VoltsOrigin),
            new($"P of the device, {PowerWords.OfDevice(port.Worst)}", state.DeviceWatts, "W", Origins.Of(DeviceDraws.Of(port.Endpoint, port.Worst))),
            new("least volts of the device", port.LeastVolts, "V", port.LeastVoltsOrigin),
        };
        var steps = new List<WorkingStep>();
        foreach (var piece in port.Endpoint.PowerRun?.Pieces ?? [])
        {
            inputs.Add(new($"length of {piece.Name}", piece.Metres, "m", piece.MetresOrigin));
            inputs.Add(new($"conductor of {piece.Name}", piece.SquareMillimetres, "mm²", piece.Cable ?? "not known"));
            inputs.Add(new($"air around {piece.Name}", piece.Celsius, "°C", piece.CelsiusOrigin));
            steps.Add(new($"one conductor of {piece.Name}", Resistance(piece), piece.Ohms, "Ω"));
        }

        steps.Add(new($"R on {port.Pairs} pairs", port.Pairs == 2 ? "one conductor out and back, two side by side each way" : "four side by side each way", port.LoopOhms, "Ω"));
        AddPoint(steps, state);
        return new Working(Formula, inputs, steps, Source);
    }

    /// <inheritdoc/>
    public IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (port.LeastVolts is not { } least || port.In(port.Worst).DeviceWatts is not { } watts || port.LoopOhms is not { } ohms || port.SourceVolts is not { } volts)
            return [];
        var wanted = Wanted(least, reserve);
        var rows = new List<Holds>();
        foreach (var piece in (port.Endpoint.PowerRun?.Pieces ?? []).Where(piece => !piece.Cord && piece.Metres is not null))
        {
            rows.Add(new($"length of {piece.Name}", "m", piece.Metres, LongestMetres(port, piece, least), LongestMetres(port, piece, wanted)));
            rows.Add(new($"air around {piece.Name}", "°C", piece.Celsius, WarmestCelsius(piece, least), WarmestCelsius(piece, wanted)));
        }

        rows.Add(new("draw of the device", "W", watts, Finite(ConstantPowerLoad.MostWattsKeeping(volts, ohms, least)), Finite(ConstantPowerLoad.MostWattsKeeping(volts, ohms, wanted))));
        return rows;
    }

    private static string Resistance(BoundPiece piece) => piece.SquareMillimetres is { } area
        ? $"{Words.Of(piece.Metres ?? 0)} m / (58 · {Words.Of(area * piece.Conductivity)} mm²) · (1 + {Words.Of(Cabling.Conductor.TemperatureCoefficientPerKelvin)} · ({Words.Of(piece.Celsius)} − 20))"
        : "the cable is not known";

    private void AddPoint(List<WorkingStep> steps, PortState state)
    {
        if (port.SourceVolts is not { } volts || port.LoopOhms is not { } ohms || state.DeviceWatts is not { } watts)
            return;
        steps.Add(new("most the run can carry", $"{Words.Of(volts)}² / (4 · {Words.Of(ohms)})", Finite(Most()), "W"));
        if (state.Point is not { } point)
        {
            steps.Add(new("V_far", "none: the device asks more than the run can carry", null, "V"));
            return;
        }

        steps.Add(new("V_far", $"({Words.Of(volts)} + √({Words.Of(volts)}² − 4 · {Words.Of(ohms)} · {Words.Of(watts)})) / 2", point.LoadVolts, "V"));
        steps.Add(new("current", $"{Words.Of(watts)} W / {Words.Of(point.LoadVolts)} V", point.Amperes, "A"));
        steps.Add(new("lost in the run", $"{Words.Of(point.Amperes)}² · {Words.Of(ohms)}", point.LostWatts, "W"));
        steps.Add(new("watts at the port", $"{Words.Of(watts)} + {Words.Of(point.LostWatts)}", point.SourceWatts, "W"));
    }

    private static double? SpareConductorOhms(PoweredPort port, double leastVolts)
    {
        if (port.LoopOhms is not { } ohms || port.SourceVolts is not { } volts || port.In(port.Worst).DeviceWatts is not { } watts)
            return null;
        return Finite(ConstantPowerLoad.MostOhmsKeeping(volts, leastVolts, watts)) is { } most ? (most - ohms) * port.Pairs / 2 : null;
    }

    private double? WarmestCelsius(BoundPiece piece, double leastVolts)
    {
        if (SpareConductorOhms(port, leastVolts) is not { } spare || piece.Ohms is not { } ohms || ohms <= 0 || ohms + spare <= 0)
            return null;
        var celsius = Conductor.CelsiusForFactor(Conductor.Factor(piece.Celsius) * (ohms + spare) / ohms);
        // Hotter, no insulation is left, and colder, no building is: within those the air does not bound the run.
        return celsius is > 150 or < -60 ? null : celsius;
    }

    private string Run() => port.Endpoint.PowerRun is { } run
        ? port.Endpoint.FromFarEnd is not null ? $"the cord from {port.Port.Ref}, which stands beside it"
        : run.Metres is { } metres ? $"{Words.Of(metres)} m of {run.Drop.Id}" : run.Drop.Id
        : "its run";

    private double Most() => ConstantPowerLoad.MostWatts(port.SourceVolts!.Value, port.LoopOhms!.Value);

    private static double? Finite(double? value) => value is { } v && double.IsFinite(v) ? v : null;
}
