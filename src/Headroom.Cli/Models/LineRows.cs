using Headroom.Domain.Catalogues;

namespace Headroom.Cli.Models;

/// <summary>The rows of what lies between two ends: cables, fibres and modules.</summary>
internal static class LineRows
{
    /// <summary>The sheet of a copper cable or cord.</summary>
    public static ModelSheet Of(CableModel model) => new ModelRows()
        .Add("category", model.Category).Add("conductor", model.Conductor).Add("conductivity", model.Conductivity)
        .Add("copper-clad", model.CopperClad ? true : null).Add("screened", model.Screened).Add("stranded", model.Stranded ? true : null)
        .Add("diameter", model.Diameter).Add("most temperature", model.MostTemperature).Sheet("cables", model.Body);

    /// <summary>The sheet of a fibre cable.</summary>
    public static ModelSheet Of(FibreModel model) => new ModelRows()
        .Add("category", model.Category).Add("fibres", model.Fibres)
        .Add("loss per km", model.LossPerKilometre.Select(loss => $"{loss.Value.Written} at {loss.Key} nm")).Sheet("fibres", model.Body);

    /// <summary>The sheet of a module or direct-attach cord.</summary>
    public static ModelSheet Of(ModuleModel model) => new ModelRows()
        .Add("speed", model.Speed).Add("media", model.Media).Add("wavelength", model.Wavelength).Add("receives", model.Receives)
        .Add("reach", model.Reach.Select(reach => $"{reach.Value.Written} over {reach.Key}"))
        .Add("loss budget", model.LossBudget).Add("draw", model.Draw).Sheet("modules", model.Body);
}
