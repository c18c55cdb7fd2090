using Headroom.Domain.Catalogues;

namespace Headroom.Cli.Models;

/// <summary>The rows of what takes power over the cable.</summary>
internal static class EndpointRows
{
    /// <summary>The sheet of an endpoint.</summary>
    public static ModelSheet Of(EndpointModel model)
    {
        var rows = new ModelRows().Add("kind", model.Kind);
        if (model.Power is { } power)
            Power(rows, power);
        else
            rows.Add("power", "none over the cable");
        foreach (var (state, watts) in model.Draws)
            rows.Add($"draws, {state}", watts);
        return rows.Add("speed", model.Speeds.Select(speed => speed.Written)).Add("ports behind", model.PortsBehind == 0 ? null : model.PortsBehind)
            .Sheet("endpoints", model.Body);
    }

    private static void Power(ModelRows rows, PowerIntake power) => rows
        .Add("class", power.Class)
        .Add("signature", power.Dual ? "dual" : null)
        .Add("passive", power.Passive)
        .Add("least volts", power.LeastVolts)
        .Add("most volts", power.MostVolts)
        .Add("asks", power.Asks)
        .Add("autoclass", power.Autoclass ? true : null)
        .Add("when demoted", power.WhenDemoted switch { null => null, WhenDemoted.Runs => "runs", _ => "stays dark" })
        .Add("capacitance", power.InputCapacitance)
        .Add("least draw", power.LeastDraw);
}
