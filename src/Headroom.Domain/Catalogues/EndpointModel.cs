using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>An endpoint model.</summary>
/// <param name="Body">Size, weight, ratings, price.</param>
/// <param name="Kind">phone, access point, camera, door station, radio, switch, other.</param>
/// <param name="Power">How it takes power over the cable; null when it has a supply of its own.</param>
/// <param name="Draws">What it draws at its connector, by state: typical, peak, start, night, frost [W].</param>
/// <param name="Speeds">The data rates it can run at [bit/s].</param>
/// <param name="PortsBehind">Ports it offers to others, for a small switch powered over the cable; 0 for none.</param>
public sealed record EndpointModel(
    Body Body,
    string Kind,
    PowerIntake? Power,
    IReadOnlyDictionary<string, Given<Watts>> Draws,
    IReadOnlyList<Given<BitsPerSecond>> Speeds,
    int PortsBehind)
{
    /// <summary>What it asks of the network; null when not known.</summary>
    public TrafficFigures? Traffic { get; init; }

    /// <summary>What its link through the air carries; null when it is no radio or it is not known.</summary>
    public RadioFigures? Radio { get; init; }

    /// <summary>How long it takes from power to being of use [s]; null when not known.</summary>
    public Given<Seconds>? Boot { get; init; }

    /// <summary>The invented name.</summary>
    public string Id => Body.Id;
}
