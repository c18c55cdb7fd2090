using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Tests.Standby;

/// <summary>What holds of every battery and every load.</summary>
public sealed class StandbyPhysicsTests
{
    // Times that rise and watts that fall, from a few rows to many.
    private static readonly Gen<DischargeTable> Tables = Gen.Select(Gen.Double[1.1, 4].Array[1, 10], Gen.Double[1.05, 3].Array[10], Gen.Double[60, 900], Gen.Double[50, 900]).Select((times, falls, first, watts) =>
    {
        var (seconds, powers) = (new List<double> { first }, new List<double> { watts });
        for (var i = 0; i < times.Length; i++)
        {
            seconds.Add(seconds[^1] * times[i]);
            powers.Add(powers[^1] / falls[i]);
        }

        return new DischargeTable([.. seconds], [.. powers]);
    });

    private static readonly Gen<(DischargeTable Table, LoadStage[] Stages)> Staged = Gen.Select(Tables, Gen.Double[0.01, 1].Array[1, 4], Gen.Double[0, 1].Array[4]).Select((table, loads, moments) =>
    {
        var from = 0.0;
        var stages = new LoadStage[loads.Length];
        for (var i = 0; i < stages.Length; i++)
        {
            stages[i] = new(from, table.LeastWatts * Math.Pow(table.MostWatts / table.LeastWatts, loads[i]));
            from += moments[i] * table.LongestSeconds / 3;
        }

        return (table, stages);
    });

    [Fact]
    public void Times_and_watts_of_a_table_are_the_same_read_both_ways() => Gen.Select(Tables, Gen.Double[0, 1]).Sample((table, share) =>
    {
        var seconds = table.ShortestSeconds * Math.Pow(table.LongestSeconds / table.ShortestSeconds, share * 0.999 + 0.0005);
        Assert.Equal(seconds, table.Seconds(table.Watts(seconds)!.Value)!.Value, 1e-6 * seconds);
    });

    [Fact]
    public void More_watts_never_last_longer() => Gen.Select(Tables, Gen.Double[0.01, 1], Gen.Double[0.01, 1]).Sample((table, one, other) =>
        (table.AtLeastSeconds(table.MostWatts * Math.Min(one, other)) ?? 0) >= (table.AtLeastSeconds(table.MostWatts * Math.Max(one, other)) ?? 0) - 1e-9);

    [Fact]
    public void Beyond_its_ends_a_table_says_nothing() => Tables.Sample(table =>
        table.Seconds(table.MostWatts * 1.0001) is null && table.Seconds(table.LeastWatts * 0.9999) is null
        && table.Watts(table.ShortestSeconds * 0.9999) is null && table.Watts(table.LongestSeconds * 1.0001) is null);

    [Theory]
    [InlineData("60, 60", "9, 8")]
    [InlineData("60, 50", "9, 8")]
    [InlineData("60, 120", "9, 9")]
    [InlineData("60, 120", "9, 10")]
    [InlineData("60", "9")]
    [InlineData("60, 120", "9")]
    public void Times_that_do_not_rise_while_watts_fall_are_refused(string seconds, string watts) =>
        Assert.Throws<ArgumentException>(() => new DischargeTable(Numbers(seconds), Numbers(watts)));

    [Fact]
    public void One_stage_lasts_what_the_table_says_by_both_methods() => Gen.Select(Tables, Gen.Double[0, 1]).Sample((table, share) =>
    {
        var watts = table.LeastWatts * Math.Pow(table.MostWatts / table.LeastWatts, share * 0.999 + 0.0005);
        LoadStage[] stages = [new(0, watts)];
        var seconds = table.Seconds(watts)!.Value;
        Assert.Equal(seconds, StagedRuntime.ByShareUsed(table, stages)!.Value, 1e-6 * seconds);
        Assert.Equal(seconds, StagedRuntime.BySections(table, stages)!.Value, 1e-6 * seconds);
    });

    [Fact]
    public void Two_stages_of_one_load_last_what_one_does() => Gen.Select(Tables, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((table, share, moment) =>
    {
        var watts = table.LeastWatts * Math.Pow(table.MostWatts / table.LeastWatts, share * 0.999 + 0.0005);
        LoadStage[] stages = [new(0, watts), new(moment * table.Seconds(watts)!.Value, watts)];
        Assert.Equal(table.Seconds(watts)!.Value, StagedRuntime.Smaller(table, stages)!.Value, 1e-6 * table.Seconds(watts)!.Value);
    });

    [Fact]
    public void By_share_used_all_shares_add_up_to_one() => Staged.Sample(one =>
    {
        if (StagedRuntime.ByShareUsed(one.Table, one.Stages) is not { } seconds)
            return;
        var used = 0.0;
        // A stage that begins when all is used up is never reached, and may be heavier than the table knows.
        for (var i = 0; i < one.Stages.Length && one.Stages[i].FromSeconds < seconds; i++)
        {
            var end = i + 1 < one.Stages.Length ? Math.Min(seconds, one.Stages[i + 1].FromSeconds) : seconds;
            used += Math.Max(0, end - one.Stages[i].FromSeconds) / one.Table.AtLeastSeconds(one.Stages[i].Watts)!.Value;
        }

        Assert.Equal(1, used, 1e-9);
    });

    [Fact]
    public void Less_load_in_all_stages_never_lasts_shorter() => Gen.Select(Staged, Gen.Double[0.3, 1]).Sample((one, times) =>
    {
        var less = one.Stages.Select(stage => stage with { Watts = stage.Watts * times }).ToArray();
        var (before, after) = (StagedRuntime.Smaller(one.Table, one.Stages), StagedRuntime.Smaller(one.Table, less));
        Assert.True(before is null || after is null || after >= before - 1e-6 * before);
    });

    [Fact]
    public void Colder_and_older_never_counts_for_less() => Gen.Select(Gen.Double[-3.8, 48], Gen.Double[0, 10], Gen.Double[0, 12]).Sample((celsius, colder, age) =>
    {
        Assert.True(celsius - colder < -3.8 || BatteryDerating.LeadTemperature(celsius - colder) >= BatteryDerating.LeadTemperature(celsius));
        Assert.True(celsius - colder < 0 || celsius > 60 || BatteryDerating.LithiumTemperature(celsius - colder) >= BatteryDerating.LithiumTemperature(celsius));
        Assert.True(BatteryDerating.Age(age + 1, 6) >= BatteryDerating.Age(age, 6));
        Assert.InRange(BatteryDerating.FloatLife(celsius), 0, 1);
    });

    [Fact]
    public void Outside_what_is_told_of_the_cold_there_is_no_factor() => Assert.Multiple(
        () => Assert.Null(BatteryDerating.LeadTemperature(-4)),
        () => Assert.Null(BatteryDerating.LeadTemperature(49)),
        () => Assert.Null(BatteryDerating.LithiumTemperature(-0.1)),
        () => Assert.Null(BatteryDerating.LeadTemperature(double.NaN)));

    [Fact]
    public void The_cap_on_ports_fills_the_feed_exactly() => Gen.Select(Gen.Double[50, 900], Gen.Double[1, 40], Gen.Double[0.5, 1], Gen.Double[0.9, 1]).Sample((feed, own, efficiency, path) =>
        ConverterLoad.PortCapWatts(feed, own, efficiency, path) is not { } ports
            || Math.Abs(Headroom.Engineering.Power.SupplyLosses.MainsWatts(own, ports, efficiency, path) - feed) < 1e-9 * feed);

    private static double[] Numbers(string text) => [.. text.Split(", ").Select(number => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture))];
}
