using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>What a radio link carries, both ways together.</summary>
/// <param name="Air">What it carries of data on a clear day, both ways together [bit/s]; null when not known.</param>
/// <param name="Rain">What is left of it in heavy rain [bit/s]; null when not known.</param>
public sealed record RadioFigures(Given<BitsPerSecond>? Air, Given<BitsPerSecond>? Rain);
