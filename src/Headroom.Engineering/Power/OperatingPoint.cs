namespace Headroom.Engineering.Power;

/// <summary>Where a constant-power load settles behind a resistive loop.</summary>
/// <param name="LoadVolts">Voltage at the load [V].</param>
/// <param name="Amperes">Current round the loop [A].</param>
/// <param name="LostWatts">Power turned into heat in the loop [W].</param>
/// <param name="SourceWatts">Power the source delivers [W], load and loss together.</param>
public readonly record struct OperatingPoint(double LoadVolts, double Amperes, double LostWatts, double SourceWatts)
{
    /// <summary>Power that the load takes [W].</summary>
    public double LoadWatts => LoadVolts * Amperes;
}
