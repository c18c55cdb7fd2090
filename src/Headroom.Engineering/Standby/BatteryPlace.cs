using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Standby;

/// <summary>The air where a battery stands.</summary>
/// <param name="Coldest">The coldest named case [°C].</param>
/// <param name="Mean">The mean of all named cases [°C].</param>
/// <param name="Origin">Where they come from, in words.</param>
/// <param name="Assumed">True when nobody wrote a temperature.</param>
public sealed record BatteryPlace(double Coldest, double Mean, string Origin, bool Assumed)
{
    // Common practice, no source: a closet that nobody measured.
    private const double UsualCelsius = 20;

    /// <summary>The air of a space, or what is assumed.</summary>
    /// <param name="space">The space; null when not known.</param>
    /// <returns>Its cases.</returns>
    public static BatteryPlace Of(Space? space)
    {
        if (space is not { Temperatures.Count: > 0 })
            return new(UsualCelsius, UsualCelsius, "assumed, no temperature written", true);
        var (coldest, sum) = (double.PositiveInfinity, 0.0);
        foreach (var (_, given) in space.Temperatures)
        {
            coldest = Math.Min(coldest, given.Value.Value);
            sum += given.Value.Value;
        }

        return new(coldest, sum / space.Temperatures.Count, $"coldest case of {space.Id}", false);
    }
}
