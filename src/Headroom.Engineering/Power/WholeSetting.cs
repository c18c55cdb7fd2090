using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Power;

/// <summary>A power setting with every gap filled in.</summary>
/// <param name="ReservesBy">What is set aside for a port in use.</param>
/// <param name="AtStart">What is set aside for a port that has just come up.</param>
/// <param name="AtRefusal">What happens behind a port that does not fit.</param>
/// <param name="Retries">Whether a refused port is tried again.</param>
/// <param name="ShedOrder">Which port of the lowest priority loses its watts first.</param>
/// <param name="Counts">Which end's figure is set aside after negotiation.</param>
/// <param name="StartStated">True when the model or the design says what counts at the start; it then stays so under another way of reserving.</param>
/// <param name="Assumed">True when neither the model nor the design says what is set aside, so that class was taken.</param>
public readonly record struct WholeSetting(
    ReservesBy ReservesBy, AtStart AtStart, AtRefusal AtRefusal, bool Retries, ShedOrder ShedOrder, NegotiatedCounts Counts, bool StartStated, bool Assumed)
{
    /// <summary>Fills the gaps of a setting.</summary>
    /// <param name="setting">The setting as model and design have it.</param>
    /// <returns>The whole setting: class, skip, no retries, highest port first, the port's figure where nobody says otherwise.</returns>
    public static WholeSetting Of(PowerSetting setting)
    {
        var by = setting.ReservesBy ?? ReservesBy.Class;
        return new(
            by,
            setting.AtStart ?? StartOf(by),
            setting.AtRefusal ?? AtRefusal.Skip,
            setting.Retries ?? false,
            setting.ShedOrder ?? ShedOrder.HighestPortFirst,
            setting.NegotiatedCounts ?? NegotiatedCounts.Port,
            setting.AtStart is not null,
            setting.ReservesBy is null);
    }

    /// <summary>This setting with another way of reserving, and that way's usual start where nobody states one.</summary>
    /// <param name="by">The other way.</param>
    /// <returns>The changed setting.</returns>
    public WholeSetting By(ReservesBy by) => by == ReservesBy ? this : this with { ReservesBy = by, AtStart = StartStated ? AtStart : StartOf(by), Assumed = false };

    // Nothing is negotiated or measured before a port has power, so that the class counts until then.
    private static AtStart StartOf(ReservesBy by) => by switch
    {
        ReservesBy.PortLimit => AtStart.PortLimit,
        ReservesBy.Measured => AtStart.Draw,
        _ => AtStart.Class,
    };
}
