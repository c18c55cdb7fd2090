using Headroom.Domain.Catalogues;

namespace Headroom.Cli.Models;

/// <summary>The rows of standby supplies and their batteries.</summary>
internal static class StandbyRows
{
    /// <summary>The sheet of a standby supply.</summary>
    public static ModelSheet Of(StandbyModel model) => new ModelRows()
        .Add("apparent", model.Apparent).Add("real", model.Real).Add("efficiency", model.Efficiency)
        .Add("battery", model.Battery).Add("blocks", model.Blocks).Add("runtime", Runtime(model.Runtime)).Sheet("standby", model.Body);

    /// <summary>The sheet of a battery block.</summary>
    public static ModelSheet Of(BatteryModel model) => new ModelRows()
        .Add("chemistry", model.Chemistry).Add("nominal", model.Nominal).Add("capacity", model.Capacity)
        .Add("discharge", Runtime(model.Discharge)).Add("life", model.Life).Sheet("batteries", model.Body);

    private static IEnumerable<string> Runtime(IReadOnlyList<RuntimePoint> points) =>
        points.Select(point => $"{point.Lasts.Written} at {point.Load.Written}");
}
