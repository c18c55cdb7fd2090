using Headroom.Domain.Catalogues;

namespace Headroom.JobFiles.Catalogues;

/// <summary>The kinds of model, in one table.</summary>
internal static class ModelKinds
{
    /// <summary>Switches.</summary>
    public static ModelKind<SwitchModel> Switches { get; } = new(
        ("switches", "switch", "Switches.", "alder"),
        () => SwitchModelFields.Shape,
        (model, id, at) => model with { Body = model.Body with { Id = id, At = at } },
        (catalogue => catalogue.Switches, (catalogue, models) => catalogue with { Switches = models }));

    /// <summary>Injectors and midspans.</summary>
    public static ModelKind<InjectorModel> Injectors { get; } = new(
        ("injectors", "injector", "Injectors and midspans.", "inlet"),
        () => InjectorModelFields.Shape,
        (model, id, at) => model with { Body = model.Body with { Id = id, At = at } },
        (catalogue => catalogue.Injectors, (catalogue, models) => catalogue with { Injectors = models }));

    /// <summary>Endpoints.</summary>
    public static ModelKind<EndpointModel> Endpoints { get; } = new(
        ("endpoints", "endpoint", "What is connected: phones, access points, cameras.", "phone"),
        () => EndpointModelFields.Shape,
        (model, id, at) => model with { Body = model.Body with { Id = id, At = at } },
        (catalogue => catalogue.Endpoints, (catalogue, models) => catalogue with { Endpoints = models }));

    /// <summary>Copper cables and cords.</summary>
    public static ModelKind<CableModel> Cables { get; } = new(
        ("cables", "cable", "Copper cables and cords.", "cat6-23"),
        () => CableModelFields.Copper,
        (model, id, at) => model with { Body = model.Body with { Id = id, At = at } },
        (catalogue => catalogue.Cables, (catalogue, models) => catalogue with { Cables = models }));

    /// <summary>Fibre cables.</summary>
    public static ModelKind<FibreModel> Fibres { get; } = new(
        ("fibres", "fibre", "Fibre cables.", "om4-8"),
        () => CableModelFields.Fibre,
        (model, id, at) => model with { Body = model.Body with { Id = id, At = at } },
        (catalogue => catalogue.Fibres, (catalogue, models) => catalogue with { Fibres = models }));

    /// <summary>Pluggable modules.</summary>
    public static ModelKind<ModuleModel> Modules { get; } = new(
        ("modules", "module", "Pluggable modules, and cords with a module at each end.", "lamp"),
        () => ModuleModelFields.Shape,
        (model, id, at) => model with { Body = model.Body with { Id = id, At = at } },
        (catalogue => catalogue.Modules, (catalogue, models) => catalogue with { Modules = models }));

    /// <summary>Standby supplies.</summary>
    public static ModelKind<StandbyModel> Standby { get; } = new(
        ("standby", "standby supply", "Standby supplies.", "holm"),
        () => StandbyModelFields.Standby,
        (model, id, at) => model with { Body = model.Body with { Id = id, At = at } },
        (catalogue => catalogue.Standby, (catalogue, models) => catalogue with { Standby = models }));

    /// <summary>Battery blocks.</summary>
    public static ModelKind<BatteryModel> Batteries { get; } = new(
        ("batteries", "battery", "Battery blocks.", "galena"),
        () => StandbyModelFields.Block,
        (model, id, at) => model with { Body = model.Body with { Id = id, At = at } },
        (catalogue => catalogue.Batteries, (catalogue, models) => catalogue with { Batteries = models }));

    /// <summary>Small fans.</summary>
    public static ModelKind<FanModel> Fans { get; } = new(
        ("fans", "fan", "Small fans.", "puff"),
        () => FanModelFields.Shape,
        (model, id, at) => model with { Body = model.Body with { Id = id, At = at } },
        (catalogue => catalogue.Fans, (catalogue, models) => catalogue with { Fans = models }));

    /// <summary>Cabinets, frames and shelves.</summary>
    public static ModelKind<CabinetModel> Cabinets { get; } = new(
        ("cabinets", "cabinet", "Cabinets, open frames and shelves.", "alcove"),
        () => CabinetModelFields.Shape,
        (model, id, at) => model with { Body = model.Body with { Id = id, At = at } },
        (catalogue => catalogue.Cabinets, (catalogue, models) => catalogue with { Cabinets = models }));

    /// <summary>All of them, in the order of the manual.</summary>
    public static IReadOnlyList<ModelKind> All { get; } =
        [Switches, Injectors, Endpoints, Cables, Fibres, Modules, Standby, Batteries, Fans, Cabinets];
}
