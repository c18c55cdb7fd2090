using Headroom.Domain.Catalogues;
using Headroom.Engineering.Airflow;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>One fan of a switch at full speed on the path of its air: as made, and as somebody changed it.</summary>
/// <param name="Own">The fan its maker fits.</param>
/// <param name="Curve">Its curve.</param>
/// <param name="Resistance">The path behind it [Pa/(m³/s)²].</param>
/// <param name="Point">Where the two meet.</param>
public sealed record FanDuty(FanModel Own, FanCurve Curve, double Resistance, WorkingPoint Point)
{
    /// <summary>The fan put in its place, or the same on another path; null when nothing was changed.</summary>
    public FanModel? Put { get; init; }

    /// <summary>Its curve at the speed it turns there; null when nothing was changed or it may not start.</summary>
    public FanCurve? PutCurve { get; init; }

    /// <summary>The path after the change [Pa/(m³/s)²]; null when nothing was changed.</summary>
    public double? ResistanceThen { get; init; }

    /// <summary>Where the two meet then; null when nothing was changed or it may not start.</summary>
    public WorkingPoint? PointThen { get; init; }

    /// <summary>The fan of a switch on its path.</summary>
    /// <param name="unit">The switch.</param>
    /// <param name="catalogue">The models.</param>
    /// <returns>The duty; null when curve, flow or path is not known.</returns>
    public static FanDuty? Of(BoundSwitch unit, Catalogue catalogue)
    {
        var change = FanChanges.Of(unit, catalogue);
        if ((change ?? FanChanges.AsMade(unit, catalogue)) is not { Own: { } own, Resistance: { } resistance, Flows: { } flows } known || FanChanges.CurveOf(own) is not { } curve)
            return null;
        var duty = new FanDuty(own, curve, resistance, new(flows.Own, curve.PressureAt(flows.Own)));
        if (change is null)
            return duty;
        var put = known is { Put: { } fan, Speed: > 0 and var speed } && known.Fit != FanFit.MayNotStart ? FanChanges.CurveOf(fan)?.AtSpeed(speed) : null;
        return duty with
        {
            Put = known.Put,
            PutCurve = put,
            ResistanceThen = known.ResistanceThen,
            PointThen = put is null ? null : AirPath.Meet(put, known.ResistanceThen ?? resistance),
        };
    }
}
