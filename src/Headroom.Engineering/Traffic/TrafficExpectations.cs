using Headroom.Domain.Jobs;
using Headroom.Engineering.Readings;

namespace Headroom.Engineering.Traffic;

/// <summary>What the study of traffic expects of a reading of speed on a line.</summary>
internal sealed class TrafficExpectations(TrafficResult result) : IExpectations
{
    // A test of a line from one computer reads this much less than the line gives: common practice, no source.
    private const double TestShare = 0.1;

    /// <inheritdoc/>
    public Expectation? Of(Reading reading)
    {
        if (reading.What != "speed")
            return null;
        var line = result.Bound.Job.Survey.Lines.FirstOrDefault(one => one.Id == reading.Where);
        var up = reading.Direction is { } way && way.Contains("up", StringComparison.Ordinal);
        var given = up ? line?.Up : line?.Down;
        if (line is null || given is null)
            return null;
        return new($"{TrafficLedger.Discipline}/{line.Id}/{(up ? "up" : "down")}", given.Value.Value / 1e6, TestShare * given.Value.Value / 1e6, OwnQuantity: true, IsLimit: true,
            "the line gives more than its contract says; do not count on it", "the line gives less than its contract says, or the computer, its port or others on the line slowed the test: repeat it at night, by cable");
    }
}
