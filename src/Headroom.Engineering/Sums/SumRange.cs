namespace Headroom.Engineering.Sums;

/// <summary>The range in which an input makes sense, and the unit in which it is told.</summary>
/// <param name="Least">The least allowed [in the unit].</param>
/// <param name="Most">The most allowed [in the unit].</param>
/// <param name="Unit">The unit.</param>
public sealed record SumRange(double Least, double Most, string Unit)
{
    /// <summary>The most values a list may have: more than any switch has ports.</summary>
    public const int MostOfAList = 1000;
}
