namespace Headroom.Engineering.Acoustics;

/// <summary>A value with its standard uncertainty.</summary>
/// <param name="Value">The expected value [dB].</param>
/// <param name="Uncertainty">Its standard uncertainty (k = 1) [dB]; 0 or more.</param>
public readonly record struct Estimate(double Value, double Uncertainty);
