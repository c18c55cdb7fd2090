using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Planning.Jobs;

/// <summary>How links run: by which drop the line comes in, and which modules go into pluggable ports.</summary>
/// <param name="LineId">The name of the line.</param>
/// <param name="Drop">The fibre on which the line comes in; null when nobody has laid one.</param>
/// <param name="LineModule">The module for it; null without fibre.</param>
/// <param name="CopperModule">The module that makes a pluggable port a copper one; null when none has a price.</param>
/// <param name="MainPlace">The place where the line comes in.</param>
internal sealed record LineWay(string LineId, Drop? Drop, ModuleModel? LineModule, ModuleModel? CopperModule, int MainPlace)
{
    /// <summary>Finds it in a job.</summary>
    public static LineWay Of(Job job, Catalogue catalogue, IReadOnlyList<string?> places, UnitPrices prices)
    {
        var used = job.Survey.Endpoints.Select(endpoint => endpoint.Drop).ToHashSet();
        var fibre = job.Survey.Drops.FirstOrDefault(drop => !used.Contains(drop.Id) && places.Contains(drop.From) && !places.Contains(drop.To) && Fibre(drop, catalogue) is not null);
        var modules = catalogue.Modules.Values.Where(module => module.Receives is null && prices.Of(module) is not null).OrderBy(module => prices.Of(module)!.Goods).ThenBy(module => module.Id, StringComparer.Ordinal).ToList();
        var module = fibre is null ? null : modules.FirstOrDefault(module => Suits(module, Fibre(fibre, catalogue)!));
        var main = fibre is null ? 0 : places.ToList().IndexOf(fibre.From);
        var line = job.Survey.Lines.Count > 0 ? job.Survey.Lines[0].Id : "line";
        return new(line, module is null ? null : fibre, module, modules.FirstOrDefault(one => one.Media == "copper"), Math.Max(0, main));
    }

    /// <summary>True when a module runs in ports of a group.</summary>
    public static bool RunsIn(ModuleModel module, PortGroup group) =>
        group.Media == "pluggable" && group.Speeds.Any(speed => speed.Value == module.Speed.Value);

    private static FibreModel? Fibre(Drop drop, Catalogue catalogue) =>
        drop.Pieces.Select(piece => piece.Cable is { } cable ? catalogue.Fibres.GetValueOrDefault(cable) : null).FirstOrDefault(fibre => fibre is not null);

    private static bool Suits(ModuleModel module, FibreModel fibre) => module.Reach.ContainsKey(fibre.Category);
}
