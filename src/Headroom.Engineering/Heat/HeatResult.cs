using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Heat;

/// <summary>Everything the study of heat and air worked out.</summary>
/// <param name="Bound">The design it was worked out for.</param>
/// <param name="Places">Every space in which a unit stands.</param>
/// <param name="Units">Every switch, injector and standby supply.</param>
/// <param name="Altitude">Height above the sea [m]; 0 where none is written.</param>
public sealed record HeatResult(BoundDesign Bound, IReadOnlyList<HeatPlace> Places, IReadOnlyList<UnitHeat> Units, double Altitude)
{
    private Dictionary<string, UnitHeat>? _byId;

    /// <summary>The air at the inlet of a unit.</summary>
    /// <param name="id">The unit.</param>
    /// <param name="name">The case; null for all at its most in the hottest.</param>
    /// <returns>The temperature [°C]; null when not known.</returns>
    public double? InletOf(string id, string? name)
    {
        if (Find(id) is not { Worst: { } worst } unit)
            return null;
        return name is null ? worst.MostInlet : (unit.In(name) ?? worst).Inlet;
    }

    /// <summary>The named cases that are known of a unit, in the order written.</summary>
    /// <param name="id">The unit.</param>
    /// <returns>The names; empty when nothing is known.</returns>
    public IReadOnlyList<string> CasesOf(string id)
    {
        if (Find(id) is not { Cases.Count: > 0, Place: { } place } unit)
            return [];
        var names = new List<string>(place.Cases.Count);
        foreach (var one in place.Cases)
        {
            if (unit.In(one.Name) is not null)
                names.Add(one.Name);
        }

        return names;
    }

    private UnitHeat? Find(string id)
    {
        if (_byId is null)
        {
            _byId = new(Units.Count);
            foreach (var unit in Units)
                _byId[unit.Unit.Id] = unit;
        }

        return _byId.GetValueOrDefault(id);
    }
}
