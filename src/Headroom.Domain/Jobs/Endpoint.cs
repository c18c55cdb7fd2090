using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>Something that is connected: a phone, an access point, a camera.</summary>
/// <param name="Id">The id people say; for counted ones the model and a number, <c>phone-3</c>.</param>
/// <param name="Model">The model in the catalogue.</param>
/// <param name="Drop">The drop it hangs on; null when it has none.</param>
/// <param name="Near">The space it is in or near, for those without a drop; null when not written.</param>
/// <param name="Mode">The state it stays in, such as <c>night</c>, where it never leaves it; null for all states of its model.</param>
/// <param name="Draws">Draws of this one that differ from the model's, by state (<c>typical</c>, <c>peak</c>, <c>start</c>, <c>night</c>, <c>frost</c>) [W].</param>
/// <param name="CountedAs">The line that counted it, such as <c>12 x phone</c>; null when it was written one by one.</param>
/// <param name="Hardware">Its hardware address, as written; null when not known.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Endpoint(
    string Id,
    string Model,
    string? Drop,
    string? Near,
    string? Mode,
    IReadOnlyDictionary<string, Given<Watts>> Draws,
    string? CountedAs,
    string? Hardware,
    Place At)
{
    /// <summary>What this one asks of the network, in place of what its model says; null where the model says it.</summary>
    public TrafficFigures? Traffic { get; init; }

    /// <summary>That it keeps pictures, and on what; null when it does not.</summary>
    public Recorder? Recorder { get; init; }
}
