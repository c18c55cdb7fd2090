namespace Headroom.Engineering.Acoustics;

/// <summary>What readings at an ear make of the prediction.</summary>
/// <param name="Value">What is added to the predicted level of the equipment [dB].</param>
/// <param name="Uncertainty">Standard uncertainty of the sum [dB]; null where that of the prediction stays.</param>
/// <param name="What">What was done, in words.</param>
public sealed record EarOffset(double Value, double? Uncertainty, string What);
