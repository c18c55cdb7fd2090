using Headroom.Domain.Jobs;
using Headroom.Engineering.Readings;

namespace Headroom.Engineering.Standby;

/// <summary>What the study of outages expects of readings: watts and minutes at a standby supply.</summary>
internal sealed class StandbyExpectations(StandbyResult result) : IExpectations
{
    // How far what a site draws lies from what its models say: common practice, no source.
    private const double LoadShare = 0.2;

    /// <inheritdoc/>
    public Expectation? Of(Reading reading)
    {
        foreach (var supply in result.Supplies)
        {
            if (supply.Placed.Id != reading.Where || supply.Stages.Count == 0)
                continue;
            return reading.What switch
            {
                "watts" => new($"standby/{supply.Placed.Id}/watts", supply.Stages[0].Watts, LoadShare * supply.Stages[0].Watts, false, IsLimit: false,
                    "more hangs on it than is written, or devices are busier", "less hangs on it than is written, or devices are off"),
                _ => null,
            };
        }

        return null;
    }
}
