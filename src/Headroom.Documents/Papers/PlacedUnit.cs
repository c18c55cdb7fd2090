using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Documents.Papers;

/// <summary>A unit of the design as papers list it: switch, injector or standby supply.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Body">Its model; null when not known.</param>
/// <param name="Standing">Where it stands.</param>
internal sealed record PlacedUnit(string Id, string Kind, Body? Body, Standing Standing)
{
    /// <summary>Where it stands, in words: <c>rack A, unit 4</c>; empty when not said.</summary>
    public string Where(Job job) => Standing.In is not { } place ? ""
        : $"{(job.Survey.Racks.Any(rack => rack.Id == place) && !place.StartsWith("rack", StringComparison.OrdinalIgnoreCase) ? "rack " : "")}{place}{(Standing.Unit is { } unit ? $", unit {Domain.Shown.Numbers.Show(unit)}" : "")}";

    /// <summary>All units of a design, switches first.</summary>
    public static IReadOnlyList<PlacedUnit> Of(PaperInput input)
    {
        var bound = input.Results.Bound;
        return
        [
            .. bound.Switches.Select(unit => new PlacedUnit(unit.Id, "switch", unit.Model.Body, unit.Placed.Standing)),
            .. bound.Injectors.Select(unit => new PlacedUnit(unit.Id, unit.Model.Ports > 1 ? "midspan" : "injector", unit.Model.Body, unit.Placed.Standing)),
            .. bound.Design.Standby.Select(unit => new PlacedUnit(unit.Id, "standby supply", unit.Model is { } model ? bound.Catalogue.Standby.GetValueOrDefault(model)?.Body : null, unit.Standing)),
        ];
    }
}
