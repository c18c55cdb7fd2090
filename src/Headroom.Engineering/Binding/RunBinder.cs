using System.Collections.Concurrent;
using System.Runtime.InteropServices;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Binding;

/// <summary>Turns a drop into a run of pieces; what nobody wrote is assumed here, in one place, and says so.</summary>
public sealed class RunBinder
{
    /// <summary>Both cords together where nobody wrote any [m]: common practice, no source.</summary>
    public const double AssumedCordMetres = 5;

    /// <summary>The gauge of such cords: thin ones, to be on the safe side; common practice, no source.</summary>
    public const double AssumedCordAwg = 26;

    /// <summary>The air around a run of which no temperature is known [°C]: a warm ceiling; common practice, no source.</summary>
    public const double AssumedCelsius = 30;

    // Copper-clad aluminium is about 63 % IACS where the catalogue does not say (computed from that assumption in the reference values).
    private const double CopperCladConductivity = 0.63;

    private static readonly PieceMake ThinCord = new() { Cable = "thin cord", SquareMillimetres = new GaugeUnit().ToBase(AssumedCordAwg), Cord = true };
    private static readonly PieceMake UnknownCord = new() { Cord = true };
    private static readonly PieceMake UnknownCable = new();

    private readonly Catalogue _catalogue;
    private readonly ConcurrentDictionary<string, PieceMake> _cables = new();
    private readonly ConcurrentDictionary<string, PieceMake> _cords = new();
    private readonly Dictionary<string, Pathway> _pathways;
    private readonly Dictionary<string, (double Celsius, AirOrigin Origin)?> _spaceAir;

    /// <summary>Prepares to bind the drops of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">The catalogue with its cables.</param>
    public RunBinder(Job job, Catalogue catalogue)
    {
        _catalogue = catalogue;
        _pathways = job.Survey.Pathways.ToDictionary(pathway => pathway.Id);
        _spaceAir = job.Survey.Spaces.ToDictionary(space => space.Id, Warmest);
    }

    /// <summary>Binds one drop.</summary>
    /// <param name="drop">The drop.</param>
    /// <returns>Its run.</returns>
    public BoundRun Bind(Drop drop)
    {
        var pieces = new BoundPiece[drop.Pieces.Count + (drop.CordAtPanel is null && drop.CordAtDevice is null ? 1 : 2)];
        var several = drop.Pieces.Count > 1;
        for (var i = 0; i < drop.Pieces.Count; i++)
            pieces[i] = Piece(drop, drop.Pieces[i], several ? $"piece {i + 1} of {drop.Id}" : drop.Id, cord: false);
        var next = drop.Pieces.Count;
        if (drop.CordAtPanel is { } panel)
            pieces[next++] = Piece(drop, panel, $"panel cord of {drop.Id}", cord: true);
        if (drop.CordAtDevice is { } device)
            pieces[next++] = Piece(drop, device, $"device cord of {drop.Id}", cord: true);
        if (next < pieces.Length)
            pieces[next] = AssumedCords(drop);
        return new BoundRun(drop, ImmutableCollectionsMarshal.AsImmutableArray(pieces));
    }

    /// <summary>What carries power where the injector stands in the room of the device and not in the closet: the cord there.</summary>
    /// <param name="run">The run; null when there is none.</param>
    /// <param name="space">The space the injector stands in; null when not said.</param>
    /// <returns>The cord at the device, as written or half of those assumed; null when power comes from the near end.</returns>
    public static BoundRun? FarEnd(BoundRun? run, string? space)
    {
        if (run is null || space is null || space != run.Drop.To || space == run.Drop.From)
            return null;
        var written = run.Pieces.FirstOrDefault(piece => piece.Written is not null && ReferenceEquals(piece.Written, run.Drop.CordAtDevice));
        return run with { Pieces = [written ?? AssumedCord($"device cord of {run.Drop.Id}", AssumedCordMetres / 2)] };
    }

    private BoundPiece Piece(Drop drop, RunPiece piece, string name, bool cord)
    {
        var (celsius, origin) = Air(drop, piece);
        var make = piece.Cable is not { } id ? cord ? UnknownCord : UnknownCable : cord ? _cords.GetOrAdd(id, CordOf) : _cables.GetOrAdd(id, CableOf);
        return new BoundPiece(name, make, celsius, origin) { Metres = piece.Length?.Value.Value, Written = piece };
    }

    private PieceMake CableOf(string id) => Make(id, cord: false);

    private PieceMake CordOf(string id) => Make(id, cord: true);

    private PieceMake Make(string id, bool cord)
    {
        var cable = _catalogue.Cables.GetValueOrDefault(id);
        return new()
        {
            Cable = cable?.Id,
            SquareMillimetres = cable?.Conductor?.Value.Value,
            Conductivity = cable?.Conductivity?.Value.Value ?? (cable?.CopperClad == true ? CopperCladConductivity : 1),
            CopperClad = cable?.CopperClad == true,
            Cord = cord,
            Copper = cable,
            Fibre = cable is null ? _catalogue.Fibres.GetValueOrDefault(id) : null,
        };
    }

    private static BoundPiece AssumedCords(Drop drop) =>
        AssumedCord($"cords of {drop.Id}", drop.CordAtPanel is null && drop.CordAtDevice is null ? AssumedCordMetres : AssumedCordMetres / 2);

    private static BoundPiece AssumedCord(string name, double metres) => new(name, ThinCord, AssumedCelsius, default) { Metres = metres };

    // A cord lies at one end of the run, the cable between both.
    private (double Celsius, AirOrigin Origin) Air(Drop drop, RunPiece piece)
    {
        if (piece.Ambient is { } written)
            return (Warm(written), new(written, null));
        if (piece.By is { } by && _pathways.TryGetValue(by, out var pathway) && pathway.Ambient is { } along)
            return (Warm(along), new(along, $"along {by}"));
        var from = ReferenceEquals(piece, drop.CordAtDevice) ? null : _spaceAir.GetValueOrDefault(drop.From);
        var to = drop.To is null || ReferenceEquals(piece, drop.CordAtPanel) ? null : _spaceAir.GetValueOrDefault(drop.To);
        var warmer = from is null || to?.Celsius > from.Value.Celsius ? to : from;
        return warmer ?? (AssumedCelsius, default);
    }

    // A range is taken at its warm end: warm copper is the worse copper.
    private static double Warm(Given<Celsius> given) => given.Value.Value + (given.PlusMinus ?? 0);

    private static (double Celsius, AirOrigin Origin)? Warmest(Space space)
    {
        if (space.Temperatures.Count == 0)
            return null;
        var (name, given) = space.Temperatures.MaxBy(pair => Warm(pair.Value));
        return (Warm(given), new(given, $"{space.Id} in its case '{name}'"));
    }
}
