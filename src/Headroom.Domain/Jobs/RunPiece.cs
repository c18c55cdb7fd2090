using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>A stretch of cable whose length, cable and surroundings are the same from end to end.</summary>
/// <param name="Length">Its length [m]; null when not surveyed.</param>
/// <param name="Cable">The cable model; null when not known.</param>
/// <param name="Ambient">Air temperature around it [°C]; null when not surveyed.</param>
/// <param name="Bundle">How many cables are tied together with it, itself included; null when not surveyed.</param>
/// <param name="By">The pathway it takes; null when not written.</param>
public sealed record RunPiece(Given<Metres>? Length, string? Cable, Given<Celsius>? Ambient, Given<Pieces>? Bundle, string? By);
