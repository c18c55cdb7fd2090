using Headroom.Domain.Findings;

namespace Headroom.Domain.Rules;

/// <summary>Units have models, stand somewhere that exists, and are fed by what exists.</summary>
internal static class UnitRules
{
    /// <summary>Checks the units of a whole design.</summary>
    public static void Check(DesignView view, JobNames names, Slips slips)
    {
        var models = names.Catalogue;
        foreach (var unit in view.Whole.Switches)
            Model(("switch", unit.Id, unit.Model), models.Switches, unit.At, slips);
        foreach (var unit in view.Whole.Injectors)
            Model(("injector", unit.Id, unit.Model), models.Injectors, unit.At, slips);
        foreach (var unit in view.Whole.Standby)
            Model(("standby supply", unit.Id, unit.Model), models.Standby, unit.At, slips);
        foreach (var unit in view.Units)
            Standing(unit, names, slips);
        foreach (var unit in view.Whole.Switches)
            Fed(unit.FedBy, unit.Id, unit.At, (view, slips));
        foreach (var unit in view.Whole.Injectors)
            Fed(unit.FedBy, unit.Id, unit.At, (view, slips));
    }

    private static void Model<T>((string Kind, string Id, string? Model) unit, IReadOnlyDictionary<string, T> known, Place at, Slips slips)
    {
        if (unit.Model is null)
        {
            var said = new Said($"{unit.Kind} {unit.Id} has no model", "every unit of the whole design has a model", "Write its model, or correct the id when it is to change an inherited unit.");
            slips.Add(RuleCodes.UnitWithoutModel, at, said);
        }
        else if (!known.ContainsKey(unit.Model))
        {
            slips.Unknown(RuleCodes.UnknownUnitModel, at, new($"{unit.Kind} model", unit.Model, unit.Id, "of the catalogue"), known.Keys);
        }
    }

    private static void Standing(StandingUnit unit, JobNames names, Slips slips)
    {
        if (unit.Standing.In is not { } place)
            return;
        if (names.Spaces.TryGetValue(place, out var space))
            SpaceRules.Inside(unit.Standing.Spot, space, unit.Id, slips);
        else if (!names.Racks.ContainsKey(place))
            slips.Unknown(RuleCodes.UnknownStanding, unit.At, new("space or rack", place, unit.Id), names.Standings);
    }

    private static void Fed(string? by, string id, Place at, (DesignView View, Slips Slips) to)
    {
        if (by is not null && !to.View.Standby.ContainsKey(by))
            to.Slips.Unknown(RuleCodes.UnknownStandby, at, new("standby supply", by, id, "of the design"), to.View.Standby.Keys);
    }
}
