using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.MeasuredDraws;

/// <summary>Gathers all readings of watts that are known, this job's and the firm's, and fits each model in each mode.</summary>
public static class MeasuredDrawStudy
{
    // Coarser than the grid of the checks, and within a tenth of a watt of it on a full switch.
    private const int Steps = 400;

    /// <summary>Works out what the readings say.</summary>
    /// <param name="bound">The bound design.</param>
    /// <param name="firm">What the firm read elsewhere.</param>
    /// <returns>The fits; null when nothing of this job's models was read, so that nothing is spent on it.</returns>
    public static MeasuredDrawResult? Of(BoundDesign bound, IReadOnlyList<FirmReading> firm)
    {
        var own = bound.Job.Readings.Where(Counts).ToList();
        if (own.Count == 0 && firm.Count == 0)
            return null;
        var endpoints = ByPlace(bound, own.Count > 0);
        var here = own.Select(reading => endpoints.TryGetValue(reading.Where, out var endpoint)
            ? new FirmReading(bound.Job.Name, endpoint.Model.Id, DrawModes.Named(endpoint.Endpoint.Mode ?? reading.While), reading.Value, reading.At)
            : null).OfType<FirmReading>();
        var fitted = Fitted(here.Concat(firm), id => bound.Endpoints.FirstOrDefault(endpoint => endpoint.Model.Id == id)?.Model);
        return fitted.Count == 0 ? null : new MeasuredDrawResult(fitted);
    }

    /// <summary>Fits each model in each mode.</summary>
    /// <param name="readings">What was read.</param>
    /// <param name="find">The model of a name; null when it is not known, and its readings are left.</param>
    /// <returns>The fits, in the order in which models were first read.</returns>
    internal static List<FittedDraw> Fitted(IEnumerable<FirmReading> readings, Func<string, EndpointModel?> find)
    {
        var fitted = new List<FittedDraw>();
        foreach (var group in readings.GroupBy(reading => reading.Model))
        {
            if (find(group.Key) is not { } model)
                continue;
            foreach (var mode in group.GroupBy(reading => DrawModes.Of(model, reading.Mode)))
            {
                if (DrawModes.Nameplate(model, mode.Key) is > 0 and var nameplate)
                    fitted.Add(Fit((model.Id, mode.Key), mode, nameplate));
            }
        }

        return fitted;
    }

    private static FittedDraw Fit((string Model, string Mode) of, IEnumerable<FirmReading> readings, double nameplate)
    {
        List<SiteReadings> sites = [.. readings.GroupBy(reading => reading.Site).Select(site => new SiteReadings(site.Key, [.. site.Select(reading => reading.Watts)]))];
        var unit = UnitSpread.Watts(sites);
        return new(of.Model, of.Mode, sites, nameplate, unit, DrawModel.Fit(sites, unit, DrawPrior.Of(nameplate), Steps));
    }

    // A bound is no value, and an instrument known to be out of calibration tells none.
    private static bool Counts(Reading reading) => reading.What == "watts" && !reading.UpperBound && reading.Calibrated != false && reading.Value > 0;

    private static Dictionary<string, BoundEndpoint> ByPlace(BoundDesign bound, bool wanted)
    {
        var places = new Dictionary<string, BoundEndpoint>();
        foreach (var endpoint in wanted ? bound.Endpoints.Where(endpoint => endpoint.TakesPower) : [])
        {
            places.TryAdd(endpoint.Id, endpoint);
            if (endpoint.Port is { } port)
                places.TryAdd(port.Ref.ToString(), endpoint);
            if (endpoint.Endpoint.Drop is { } drop)
                places.TryAdd(drop, endpoint);
        }

        return places;
    }
}
