using Headroom.Domain.Catalogues;

namespace Headroom.Cli.Models;

/// <summary>The kinds of models, and all models of a catalogue as sheets.</summary>
internal static class ModelKinds
{
    private static readonly (string Name, Func<Catalogue, IEnumerable<ModelSheet>> Sheets)[] Kinds =
    [
        ("switches", catalogue => catalogue.Switches.Values.Select(PoweringRows.Of)),
        ("injectors", catalogue => catalogue.Injectors.Values.Select(PoweringRows.Of)),
        ("endpoints", catalogue => catalogue.Endpoints.Values.Select(EndpointRows.Of)),
        ("cables", catalogue => catalogue.Cables.Values.Select(LineRows.Of)),
        ("fibres", catalogue => catalogue.Fibres.Values.Select(LineRows.Of)),
        ("modules", catalogue => catalogue.Modules.Values.Select(LineRows.Of)),
        ("standby", catalogue => catalogue.Standby.Values.Select(StandbyRows.Of)),
        ("batteries", catalogue => catalogue.Batteries.Values.Select(StandbyRows.Of)),
        ("fans", catalogue => catalogue.Fans.Values.Select(CabinetRows.Of)),
        ("cabinets", catalogue => catalogue.Cabinets.Values.Select(CabinetRows.Of)),
    ];

    /// <summary>The names of the kinds, as catalogue files have them.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Kinds.Select(kind => kind.Name)];

    /// <summary>All models, by kind and name.</summary>
    public static IReadOnlyList<ModelSheet> All(Catalogue catalogue) =>
        [.. Kinds.SelectMany(kind => kind.Sheets(catalogue).OrderBy(sheet => sheet.Id, StringComparer.Ordinal))];
}
