using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A room, cupboard, yard or other place where things stand.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Size">Inner length, width and height; null when not surveyed.</param>
/// <param name="Kind">What kind of room it is, from the list of kinds; null when not written.</param>
/// <param name="Surfaces">How its surfaces take sound: <c>hard</c>, <c>average</c>, <c>soft</c>; null when not written.</param>
/// <param name="Reverberation">Measured reverberation time T60 [s]; null when not measured.</param>
/// <param name="Background">Background sound level with all equipment off [dB(A)]; null when not measured.</param>
/// <param name="Temperatures">Named cases of air temperature, such as weekday, summer, weekend [°C].</param>
/// <param name="Floor">The floor it lies on; null when not written.</param>
/// <param name="Corner">Where its corner lies in the building's plan [m]; null when not written.</param>
/// <param name="Enclosure">How the air in it is shut off, for a cupboard; null when not written.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record Space(
    string Id,
    Given<Size>? Size,
    string? Kind,
    string? Surfaces,
    Given<Seconds>? Reverberation,
    Given<SoundPressure>? Background,
    IReadOnlyDictionary<string, Given<Celsius>> Temperatures,
    string? Floor,
    Given<Spot>? Corner,
    Enclosure? Enclosure,
    Place At);
