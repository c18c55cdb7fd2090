namespace Headroom.Engineering.Cabling;

/// <summary>What was worked out of the distance to the mains beside a pathway.</summary>
/// <param name="Use">The pathway and what lies in it.</param>
/// <param name="Class">The class of the cable least proof against mains.</param>
/// <param name="Barrier">What lies between; null when not surveyed.</param>
/// <param name="Circuits">Single-phase circuits of up to 20 A; null when not surveyed.</param>
/// <param name="NeededMillimetres">The distance needed, with nothing between where the barrier is not known [mm]; null likewise.</param>
internal sealed record SeparationFigures(PathwayUse Use, SeparationClass Class, MainsBarrier? Barrier, int? Circuits, double? NeededMillimetres);
