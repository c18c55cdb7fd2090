namespace Headroom.Domain.Catalogues;

/// <summary>All models known: the shipped ones, overridden and extended by the firm's own.</summary>
/// <param name="Switches">Switches by id.</param>
/// <param name="Injectors">Injectors and midspans by id.</param>
/// <param name="Endpoints">Endpoints by id.</param>
/// <param name="Cables">Cables and cords by id.</param>
/// <param name="Fibres">Fibre cables by id.</param>
/// <param name="Modules">Pluggable modules by id.</param>
/// <param name="Standby">Standby supplies by id.</param>
/// <param name="Batteries">Battery blocks by id.</param>
/// <param name="Fans">Fans by id.</param>
/// <param name="Cabinets">Cabinets and shelves by id.</param>
public sealed record Catalogue(
    IReadOnlyDictionary<string, SwitchModel> Switches,
    IReadOnlyDictionary<string, InjectorModel> Injectors,
    IReadOnlyDictionary<string, EndpointModel> Endpoints,
    IReadOnlyDictionary<string, CableModel> Cables,
    IReadOnlyDictionary<string, FibreModel> Fibres,
    IReadOnlyDictionary<string, ModuleModel> Modules,
    IReadOnlyDictionary<string, StandbyModel> Standby,
    IReadOnlyDictionary<string, BatteryModel> Batteries,
    IReadOnlyDictionary<string, FanModel> Fans,
    IReadOnlyDictionary<string, CabinetModel> Cabinets)
{
    /// <summary>A catalogue with nothing in it.</summary>
    public static Catalogue Empty { get; } = new(
        new Dictionary<string, SwitchModel>(),
        new Dictionary<string, InjectorModel>(),
        new Dictionary<string, EndpointModel>(),
        new Dictionary<string, CableModel>(),
        new Dictionary<string, FibreModel>(),
        new Dictionary<string, ModuleModel>(),
        new Dictionary<string, StandbyModel>(),
        new Dictionary<string, BatteryModel>(),
        new Dictionary<string, FanModel>(),
        new Dictionary<string, CabinetModel>());
}
