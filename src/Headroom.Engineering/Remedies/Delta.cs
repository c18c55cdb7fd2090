using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies;

/// <summary>Makes designs that say only what differs from another, and values for them.</summary>
internal static class Delta
{
    /// <summary>A design that changes nothing.</summary>
    public static Design Of(RemedyCase at) => new("", at.Design.Id, [], [], [], null, [], [], Place.None);

    /// <summary>A design that changes one switch.</summary>
    public static Design Switch(RemedyCase at, PlacedSwitch unit) => Of(at) with { Switches = [unit] };

    /// <summary>A design that changes something of the building.</summary>
    public static Design Building(RemedyCase at, BuildingChange change) => Of(at) with { Building = change };

    /// <summary>A switch of which nothing differs yet.</summary>
    public static PlacedSwitch Switch(string id) => new(id, null, null, Nowhere, null, null, PowerSetting.Silent, null, Place.None);

    /// <summary>An injector of which nothing differs yet.</summary>
    public static PlacedInjector Injector(string id, string? model = null) => new(id, model, Nowhere, null, [], Place.None);

    /// <summary>A standby supply of which nothing differs yet.</summary>
    public static PlacedStandby Standby(string id, string? model = null) => new(id, model, Nowhere, null, Place.None);

    /// <summary>A place that is not said.</summary>
    public static Standing Nowhere { get; } = new(null, null, null);

    /// <summary>A value as it will stand in the file, so that it is the same when it is read again.</summary>
    public static Given<T> Value<T>(string written)
        where T : struct, IQuantity<T> =>
        QuantityText.Read<T>(written, Place.None, out var problem) ?? throw new ArgumentException($"'{written}' is no value: {problem}", nameof(written));
}
