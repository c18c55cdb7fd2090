using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Where a unit of a design stands, and what feeds it.</summary>
internal static class StandingFields
{
    private static readonly Field<string> In = new("in", Shapes.Name("a space or rack"), "The space or rack it stands in.", "A");
    private static readonly Field<Given<Spot>> Spot = new("at", () => Boxes.Spot, "The spot in the space.", "1.1 x 0.6 x 0.8 m");
    private static readonly Field<int> Unit = new("unit", new CountShape(1, 60), "The lowest rack unit it fills, from the bottom.", "3");

    /// <summary>The standby supply that feeds it.</summary>
    public static Field<string> FedBy { get; } = new("fed-by", Shapes.Name("a standby supply"), "The standby supply that feeds it; without one the mains does.", "ups-1");

    private static readonly Field<string> On = new("on", Shapes.Name("a unit"), "The unit it is stacked on, where several stand on a desk or shelf.", "sw-1");

    private static readonly Field<DateOnly> Since = new("since", Shapes.Day, "The day it was put in, from which its warranty runs.", "2025-05-12");

    /// <summary>The keys.</summary>
    public static IReadOnlyList<Field> All { get; } = [In, Spot, Unit, On, Since];

    /// <summary>The place as far as it is written.</summary>
    public static Standing Build(Values values) => new(values.Get(In), values.Get(Spot), values.Maybe(Unit)) { On = values.Get(On), Since = values.Maybe(Since) };
}
