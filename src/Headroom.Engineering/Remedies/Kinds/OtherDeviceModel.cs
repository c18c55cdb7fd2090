using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Devices of one model exchanged for others of their kind that draw less and, as far as the catalogue tells, do no less.</summary>
internal sealed class OtherDeviceModel : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (entry.Discipline != PowerLedger.Discipline && !Entries.IsOfVolts(entry))
            yield break;
        var own = at.EndpointsOf(entry).ToList();
        var devices = own.Count > 0 ? own : at.Bound.Endpoints.Where(endpoint => endpoint.Port?.Unit == entry.Subject).ToList();
        foreach (var alike in devices.Where(device => device.TakesPower).GroupBy(device => device.Model.Id))
        {
            var model = alike.First().Model;
            foreach (var other in at.Catalogue.Endpoints.Values.Where(other => other.Kind == model.Kind && DrawsLess(other, model) && ServesAsWell(other, model)))
                yield return Idea([.. alike], other, at);
        }
    }

    private static bool DrawsLess(EndpointModel other, EndpointModel model) =>
        other.Power is not null && Most(other) is { } less && Most(model) is { } most && less < most;

    // As far as the catalogue tells: as fast, and made for air as cold and as warm.
    private static bool ServesAsWell(EndpointModel other, EndpointModel model) =>
        NotLess(LinkRate.Fastest(other.Speeds), LinkRate.Fastest(model.Speeds))
        && NotLess(other.Body.MostAmbient?.Value.Value, model.Body.MostAmbient?.Value.Value)
        && NotLess(-other.Body.LeastAmbient?.Value.Value, -model.Body.LeastAmbient?.Value.Value);

    private static bool NotLess(double? one, double? than) => than is null || one >= than;

    private static double? Most(EndpointModel model) => model.Draws.GetValueOrDefault(DeviceDraws.Name(PowerState.Peak))?.Value.Value;

    private static RemedyIdea Idea(List<BoundEndpoint> devices, EndpointModel other, RemedyCase at) => new(
        "device model",
        $"{Words.List([.. devices.Select(device => device.Id)], most: 8)}: {other.Id} in place of {devices[0].Model.Id}",
        Delta.Building(at, new() { Endpoints = [.. devices.Select(device => new EndpointChange(device.Id, Place.None) { Model = other.Id })] }))
    {
        Minutes = (Entries.Moving.Low * devices.Count, Entries.Moving.High * devices.Count),
        Rough = $"whether {other.Id} does what {devices[0].Model.Id} did is for the client to say",
    };
}
