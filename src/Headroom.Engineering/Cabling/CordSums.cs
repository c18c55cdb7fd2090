namespace Headroom.Engineering.Cabling;

/// <summary>What was worked out of the cords of one run.</summary>
/// <param name="Metres">All cords together, one that was not written as assumed [m]; null when the length of one is not known.</param>
/// <param name="InCableMetres">Metres of horizontal cable at 20 °C that lose as much [m]; null when a cord is not known or not allowed at all.</param>
/// <param name="ThinMetres">Of these, cords thinner than 26 AWG [m].</param>
/// <param name="OutletEndMetres">The cord at the outlet end [m].</param>
/// <param name="LongestMetres">The longest they may be together, in the same proportions [m]; null when the link or a cord is not known.</param>
/// <param name="Bound">Which rule bounds them.</param>
/// <param name="LoopOhms">A pair of them out and back at 20 °C [Ω]; null when a length or a conductor is not known.</param>
public sealed record CordSums(
    double? Metres, double? InCableMetres, double ThinMetres, double OutletEndMetres, double? LongestMetres, CordBound Bound, double? LoopOhms);
