namespace Headroom.Engineering.Acoustics;

/// <summary>What several jobs say of how far a model's sound lies from its catalogue.</summary>
/// <param name="FixedMean">Mean as if there were no spread between jobs [dB].</param>
/// <param name="Spread">Sum of squared distances from it, in their uncertainties [1].</param>
/// <param name="C">Scale of the moment estimate [1/dB²].</param>
/// <param name="Tau">Spread between jobs [dB].</param>
/// <param name="Mean">Mean with that spread [dB].</param>
/// <param name="Error">Its standard error [dB].</param>
/// <param name="OfNewJob">Standard deviation for a job that comes [dB], with the least spread while there are few.</param>
public sealed record LearnedOffset(double FixedMean, double Spread, double C, double Tau, double Mean, double Error, double OfNewJob);
