using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What the building dictates, whichever design is chosen.</summary>
/// <param name="Spaces">Rooms, cupboards, yards.</param>
/// <param name="Listeners">People who must not be disturbed, at a spot.</param>
/// <param name="Racks">Racks and wall cabinets.</param>
/// <param name="Pathways">Conduits, trays and other ways of cables.</param>
/// <param name="Drops">Outlets with their cables.</param>
/// <param name="Endpoints">What is connected.</param>
public sealed record Survey(
    IReadOnlyList<Space> Spaces,
    IReadOnlyList<Listener> Listeners,
    IReadOnlyList<Rack> Racks,
    IReadOnlyList<Pathway> Pathways,
    IReadOnlyList<Drop> Drops,
    IReadOnlyList<Endpoint> Endpoints)
{
    /// <summary>Walls between spaces, as far as sound goes through them.</summary>
    public IReadOnlyList<Partition> Partitions { get; init; } = [];

    /// <summary>Desks, counters and screens behind whose edge something stands.</summary>
    public IReadOnlyList<Screen> Screens { get; init; } = [];

    /// <summary>Lines that lead out of the house.</summary>
    public IReadOnlyList<Line> Lines { get; init; } = [];

    /// <summary>Equipment of the client's own that is heard.</summary>
    public IReadOnlyList<Noise> Noises { get; init; } = [];

    /// <summary>What is in the racks already: panels, shelves, outlets.</summary>
    public IReadOnlyList<Fitting> Fittings { get; init; } = [];

    /// <summary>What addresses the site may use; null when nobody has written any.</summary>
    public AddressPlan? Addresses { get; init; }

    /// <summary>How high above the sea the building stands [m]; null when not written.</summary>
    public Given<Metres>? Altitude { get; init; }
}
