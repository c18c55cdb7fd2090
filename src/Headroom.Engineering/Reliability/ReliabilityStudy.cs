using Headroom.Domain.Catalogues;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Reliability;

/// <summary>Works out failure rates and spares of a firm's fleet. Jobs without a fleet pay nothing for it.</summary>
public static class ReliabilityStudy
{
    /// <summary>Works out the fleet of a job.</summary>
    /// <param name="bound">The bound design.</param>
    /// <returns>The result; entries are made from it by <see cref="ReliabilityLedger"/>.</returns>
    public static ReliabilityResult Of(BoundDesign bound) => new(bound.Job.Policy)
    {
        Rates = [.. bound.Job.Fleet.Select(row => new FleetRate(row, BodyOf(bound.Catalogue, row.Model)))],
    };

    private static Body? BodyOf(Catalogue all, string model) =>
        all.Switches.GetValueOrDefault(model)?.Body ?? all.Injectors.GetValueOrDefault(model)?.Body ?? all.Endpoints.GetValueOrDefault(model)?.Body
        ?? all.Standby.GetValueOrDefault(model)?.Body ?? all.Modules.GetValueOrDefault(model)?.Body ?? all.Batteries.GetValueOrDefault(model)?.Body ?? all.Fans.GetValueOrDefault(model)?.Body;
}
