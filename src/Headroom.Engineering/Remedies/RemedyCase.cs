using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;
using Headroom.Engineering.MeasuredDraws;
using Headroom.Engineering.Power;

namespace Headroom.Engineering.Remedies;

/// <summary>A design that is to be mended, with its building and what its ports give; kinds of remedies look around in it.</summary>
internal sealed class RemedyCase
{
    /// <summary>Binds the design and works out its power.</summary>
    public RemedyCase(Job job, Catalogue catalogue, Design whole, StudyRequest request)
    {
        (Job, Catalogue, Design) = (job, catalogue, whole);
        Bound = Binder.Bind(job, catalogue, whole, request.Counts);
        Power = PowerStudy.Of(Bound, MeasuredDrawStudy.Of(Bound, request.FirmReadings));
    }

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>The models there are.</summary>
    public Catalogue Catalogue { get; }

    /// <summary>The design, whole.</summary>
    public Design Design { get; }

    /// <summary>The design, bound.</summary>
    public BoundDesign Bound { get; }

    /// <summary>What its ports give.</summary>
    public PowerResult Power { get; }

    /// <summary>The building as the design has it.</summary>
    public Survey Survey => Bound.Job.Survey;

    /// <summary>The switches that an entry is about: itself, that of its device, those of what must go on working, those a standby supply feeds.</summary>
    public IEnumerable<BoundSwitch> SwitchesOf(LedgerEntry entry)
    {
        var ids = EndpointsOf(entry).Select(endpoint => endpoint.Port?.Switch?.Id).OfType<string>().ToHashSet();
        return Bound.Switches.Where(unit => unit.Id == entry.Subject || unit.Placed.FedBy == entry.Subject || ids.Contains(unit.Id));
    }

    /// <summary>The endpoints that an entry is about: itself, those on its drop, or those of its kind where it is about what must go on working.</summary>
    public IEnumerable<BoundEndpoint> EndpointsOf(LedgerEntry entry) => Bound.Endpoints.Where(endpoint =>
        endpoint.Id == entry.Subject || endpoint.Endpoint.Drop == entry.Subject || (entry.Kind is "kept" or "back" && endpoint.Model.Kind == entry.Subject));

    /// <summary>The drops that an entry is about: itself, that of its device, those of its pathway, those of its bundle.</summary>
    public IEnumerable<Drop> DropsOf(LedgerEntry entry)
    {
        var own = EndpointsOf(entry).Select(endpoint => endpoint.Endpoint.Drop).OfType<string>().ToHashSet();
        return Survey.Drops.Where(drop => drop.Id == entry.Subject || own.Contains(drop.Id) || drop.Pieces.Any(piece => piece.By is not null && piece.By == entry.Subject)
            || (entry.Subject.Contains("..", StringComparison.Ordinal) && IsBetween(drop.Id, entry.Subject)));
    }

    /// <summary>What a device's drop, or the device itself, is patched by.</summary>
    public string? PatchOf(BoundEndpoint endpoint) =>
        Design.Patch.FirstOrDefault(patch => patch.What == endpoint.Endpoint.Drop || patch.What == endpoint.Id)?.What;

    /// <summary>The cords that lead to a unit, by what is at their other end.</summary>
    public HashSet<int> PortsTaken(string unit) =>
    [
        .. Design.Patch.Select(patch => patch.To).Concat(Design.Injectors.SelectMany(injector => injector.From))
            .Concat((Design.Uplinks ?? []).SelectMany(link => new[] { link.From, link.To }))
            .Where(port => port.Unit == unit).Select(port => port.Port ?? 1),
        .. Bound.Endpoints.Where(endpoint => endpoint.Port is { Assumed: true } port && port.Switch?.Id == unit).Select(endpoint => endpoint.Port!.Port),
    ];

    private static bool IsBetween(string id, string range)
    {
        var ends = range.Split("..");
        return id.Length == ends[0].Length && string.CompareOrdinal(id, ends[0]) >= 0 && string.CompareOrdinal(id, ends[^1]) <= 0;
    }
}
