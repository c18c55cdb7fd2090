using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
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
        Rates = [.. bound.Job.Fleet.Select(row => Rate(row, bound.Catalogue))],
    };

    private static FleetRate Rate(FleetRow row, Catalogue all)
    {
        var (body, kind) = Known(row.Model, all);
        return new FleetRate(row, body) { Kind = kind };
    }

    /// <summary>The body and the kind of a model; one that the catalogue does not know is a kind of its own, and compared with nothing.</summary>
    internal static (Body? Body, string Kind) Known(string id, Catalogue all) =>
        all.Switches.TryGetValue(id, out var unit) ? (unit.Body, "switch")
            : all.Injectors.TryGetValue(id, out var injector) ? (injector.Body, "injector")
            : all.Endpoints.TryGetValue(id, out var endpoint) ? (endpoint.Body, endpoint.Kind)
            : all.Standby.TryGetValue(id, out var standby) ? (standby.Body, "standby")
            : all.Modules.TryGetValue(id, out var module) ? (module.Body, "module")
            : (null, id);
}
