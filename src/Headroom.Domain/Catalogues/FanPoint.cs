using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>A point of a fan's curve.</summary>
/// <param name="Flow">Flow [m³/h].</param>
/// <param name="Pressure">Static pressure [Pa].</param>
public sealed record FanPoint(Given<CubicMetresPerHour> Flow, Given<Pascals> Pressure);
