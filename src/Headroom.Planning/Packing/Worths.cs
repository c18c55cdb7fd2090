namespace Headroom.Planning.Packing;

/// <summary>What it is worth to serve one of each kind, and to give an end of a link a port, in the smallest coin.</summary>
/// <param name="OfKind">One of each kind.</param>
/// <param name="OfLink">An end of a link inside the place.</param>
/// <param name="OfPlug">A plug on the extra of the place, which boxes and what goes between take.</param>
internal sealed record Worths(double[] OfKind, double OfLink, double OfPlug);
