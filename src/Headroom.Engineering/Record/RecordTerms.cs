namespace Headroom.Engineering.Record;

/// <summary>How a firm's record is studied.</summary>
/// <param name="On">The day up to which hours in service are counted.</param>
/// <param name="HotCelsius">From which air on a place counts as hot [°C].</param>
public sealed record RecordTerms(DateOnly On, double HotCelsius = RecordTerms.UsualHotCelsius)
{
    /// <summary>From which air on a place counts as hot where nobody says [°C]: an engineering guess.</summary>
    public const double UsualHotCelsius = 35;
}
