using Headroom.Domain.Catalogues;
using Headroom.Engineering.Airflow;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>Works out what another fan in a switch does.</summary>
internal static class FanChanges
{
    private const double SecondsPerHour = 3600;

    // Holes are drilled to a tenth of a millimetre or so.
    private const double SameHoles = 0.0005;

    /// <summary>The change that a design writes of a switch; null when it writes none.</summary>
    public static FanChange? Of(BoundSwitch s, Catalogue catalogue)
    {
        var own = s.Model.Fan is { } name ? catalogue.Fans.GetValueOrDefault(name) : null;
        var put = s.Placed.Fan is { } id ? catalogue.Fans.GetValueOrDefault(id) : own;
        if (s.Placed.Fan is null && s.Placed.Air is null || s.Placed.Fan is not null && put is null)
            return null;
        if (own is null || put is null)
            return new(null, put) { Airway = s.Placed.Air, Question = $"which fan has {s.Model.Id}? read the label: volts, amperes, size, wires" };
        var volts = own.Rated.Value.Value;
        var fit = FanVolts.Fit(put.Rated.Value.Value, volts, put.Start?.Value.Value);
        var change = new FanChange(own, put)
        {
            Fit = fit,
            Speed = FanVolts.SpeedRatio(put.Rated.Value.Value, volts),
            Misfits = Misfits(own, put),
            Airway = s.Placed.Air,
        };
        return WithAir(change, s);
    }

    /// <summary>The maker's fan on its path, nothing changed; null when the model names no fan.</summary>
    public static FanChange? AsMade(BoundSwitch s, Catalogue catalogue) =>
        s.Model.Fan is { } name && catalogue.Fans.GetValueOrDefault(name) is { } own ? WithAir(new(own, own) { Speed = 1 }, s) : null;

    /// <summary>The curve of a fan; null when it has none.</summary>
    public static FanCurve? CurveOf(FanModel fan)
    {
        if (fan.Curve.Count < 2)
            return null;
        var (flows, pressures) = (new double[fan.Curve.Count], new double[fan.Curve.Count]);
        for (var i = 0; i < flows.Length; i++)
            (flows[i], pressures[i]) = (fan.Curve[i].Flow.Value.Value / SecondsPerHour, fan.Curve[i].Pressure.Value.Value);
        return new(flows, pressures);
    }

    private static FanChange WithAir(FanChange change, BoundSwitch s)
    {
        var (count, top) = (s.Model.Sound?.Fans, s.Model.Sound?.Levels is { Count: > 0 } levels ? levels[^1].Flow : null);
        if (count is not > 0 || top is not { } moved || moved.Value.Value <= 0)
            return change with { Question = $"how much air does {s.Model.Id} move at its highest level, and with how many fans? without it nobody knows what another fan leaves of it" };
        if (CurveOf(change.Own!) is not { } own || CurveOf(change.Put!) is not { } put)
            return change with { Question = $"what pressure and flow has {(CurveOf(change.Own!) is null ? change.Own!.Id : change.Put!.Id)}? a fan without a curve is a guess" };
        var each = moved.Value.Value / SecondsPerHour / count.Value;
        if (AirPath.ResistanceOf(own, each) is not { } path)
            return change with { Question = $"{s.Model.Id} is said to move more air than its fans {change.Own!.Id} do in free air: which of the two is wrong?" };
        var then = path;
        if (change.Airway is { } airway)
        {
            if (AirwayResistance.Of(airway, s.Id, out var question) is not { } opening)
                return change with { Question = question };
            if (opening.Before > path)
                return change with { Question = $"the opening of one fan of {s.Id} is said to take more than its whole way of air: which of 'opening', 'grille' and 'gap' is wrong, or is 'flow' of {s.Model.Id}?" };
            then = path - opening.Before + opening.Then;
        }

        var there = change.Speed is > 0 and var speed ? AirPath.Meet(put.AtSpeed(speed), then).Flow : 0;
        return change with
        {
            Resistance = path,
            ResistanceThen = then,
            Flows = (each, there),
            Decibels = change.Put!.Power?.Value.Value - change.Own!.Power?.Value.Value
                + (change.Speed is > 0 and var turned && turned != 1 ? FanLaws.LevelChange(turned) : 0),
        };
    }

    private static List<string> Misfits(FanModel own, FanModel put)
    {
        var misfits = new List<string>();
        if (own.Holes is { } holes && put.Holes is { } other && Math.Abs(holes.Value.Value - other.Value.Value) > SameHoles)
            misfits.Add($"its fixing holes are {other.Written} apart, those of the case {holes.Written}");
        if (own.Body.Depth?.Value.Value < put.Body.Depth?.Value.Value - SameHoles)
            misfits.Add($"it is deeper than the maker's, {put.Body.Depth!.Written} against {own.Body.Depth!.Written}: see whether the case has the room");
        if (own.Wires is { } wires && put.Wires is { } there && wires != there)
            misfits.Add($"its plug has {there} wires where the maker's has {wires}; the order of the pins is no standard: check with a meter before plugging");
        if (own.Tachometer == true && put.Tachometer == false)
            misfits.Add("it reports no speed: the switch sees a fan that stands still, and may alarm, run the others at full speed or switch off");
        if (own.Draw is { } amperes && put.Draw?.Value.Value > amperes.Value.Value)
            misfits.Add($"it takes {put.Draw!.Written} where the maker's takes {amperes.Written}: the board may not give that");
        if (put.Speed?.Value.Value < own.Speed?.Value.Value * AlarmShare && put.Tachometer != false)
            misfits.Add("it turns so much more slowly that the switch may take it for a fault and alarm or run flat out");
        return misfits;
    }

    // Firmware often has a fixed least speed; where nobody knows it, half of the maker's is taken (common practice, no source).
    private const double AlarmShare = 0.5;
}
