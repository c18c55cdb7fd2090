namespace Headroom.Planning.Packing;

/// <summary>Something of which the boxes of a set must have enough together, in shares of what is needed.</summary>
/// <param name="OfFamily">What one box of each family has of it.</param>
/// <param name="Lacking">What it costs beside the boxes to do without any of it, in the smallest coin; infinite when that cannot be.</param>
internal sealed record SetRow(double[] OfFamily, double Lacking)
{
    /// <summary>What may be missing for want of figures in a number.</summary>
    public const double Slack = 1e-6;
}
