namespace Headroom.Engineering.Standby;

/// <summary>One thing that hangs on a standby supply.</summary>
/// <param name="Id">Its id or name.</param>
/// <param name="MostWatts">What it takes from its feed at its most [W]; null when not known.</param>
/// <param name="PowerFactor">Real over apparent power at its feed [1].</param>
/// <param name="FactorAssumed">True when nobody says the power factor.</param>
/// <param name="Origin">Where its watts come from, in words.</param>
/// <param name="Question">What is to be found out; null when nothing.</param>
public sealed record FedUnit(string Id, double? MostWatts, double PowerFactor, bool FactorAssumed, string Origin, string? Question)
{
    /// <summary>What is taken where nobody says the power factor [1]: assumed.</summary>
    public const double UsualPowerFactor = 0.9;
}
