using Headroom.Domain.Catalogues;

namespace Headroom.Cli.Models;

/// <summary>The rows of fans and of what things stand in.</summary>
internal static class CabinetRows
{
    /// <summary>The sheet of a fan.</summary>
    public static ModelSheet Of(FanModel model) => new ModelRows()
        .Add("rated", model.Rated).Add("starts at", model.Start).Add("current", model.Draw).Add("speed", model.Speed)
        .Add("curve", model.Curve.Select(point => $"{point.Pressure.Written} at {point.Flow.Written}"))
        .Add("sound", model.Power).Add("holes", model.Holes).Add("wires", model.Wires).Add("tachometer", model.Tachometer).Sheet("fans", model.Body);

    /// <summary>The sheet of a cabinet, frame or shelf.</summary>
    public static ModelSheet Of(CabinetModel model) => new ModelRows()
        .Add("kind", model.Kind).Add("inside", model.Inside).Add("usable depth", model.UsableDepth).Add("load", model.Load)
        .Add("vent area", model.VentArea).Add("insertion loss", model.InsertionLoss).Sheet("cabinets", model.Body);
}
