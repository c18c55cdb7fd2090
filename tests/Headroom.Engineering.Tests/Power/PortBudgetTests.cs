using Headroom.Engineering.Power;

namespace Headroom.Engineering.Tests.Power;

public sealed class PortBudgetTests
{
    private static readonly Gen<(double Budget, double[] Asks)> Budgets = Gen.Select(Gen.Double[0, 400], Gen.Double[0, 90].Array[0, 48]);

    private static readonly Gen<AtRefusal> Refusals = Gen.Enum<AtRefusal>();

    [Fact]
    public void The_budget_is_never_overdrawn() => Gen.Select(Budgets, Refusals).Sample((given, atRefusal) =>
        PortBudget.Fill(given.Budget, given.Asks, atRefusal).GrantedWatts <= given.Budget + 1e-9);

    [Fact]
    public void What_is_granted_and_what_is_left_make_the_budget() => Gen.Select(Budgets, Refusals).Sample((given, atRefusal) =>
    {
        var fill = PortBudget.Fill(given.Budget, given.Asks, atRefusal);
        var granted = given.Asks.Where((_, i) => fill.Granted[i]).Sum();
        return Math.Abs(granted - fill.GrantedWatts) < 1e-9 && Math.Abs(fill.GrantedWatts + fill.LeftWatts - given.Budget) < 1e-9;
    });

    [Fact]
    public void An_ask_that_was_skipped_would_not_fit_in_what_is_left() => Budgets.Sample((budget, asks) =>
    {
        var fill = PortBudget.Fill(budget, asks, AtRefusal.Skip);
        return asks.Where((_, i) => !fill.Granted[i]).All(watts => watts > fill.LeftWatts);
    });

    [Fact]
    public void After_a_stop_no_later_port_is_served() => Budgets.Sample((budget, asks) =>
    {
        var granted = PortBudget.Fill(budget, asks, AtRefusal.Stop).Granted;
        return granted.SkipWhile(served => served).All(served => !served);
    });

    [Fact]
    public void Skipping_serves_every_port_that_stopping_serves() => Budgets.Sample((budget, asks) =>
        PortBudget.Fill(budget, asks, AtRefusal.Stop).Granted.Zip(PortBudget.Fill(budget, asks, AtRefusal.Skip).Granted).All(pair => !pair.First || pair.Second));

    // Added one by one in binary, 8 and 16 asks come to a little more than the budget, 24 to a little less.
    [Theory]
    [InlineData(8, 123.2)]
    [InlineData(16, 246.4)]
    [InlineData(24, 369.6)]
    public void A_budget_of_just_the_sum_serves_all(int ports, double budget) =>
        Assert.DoesNotContain(false, PortBudget.Fill(budget, [.. Enumerable.Repeat(15.4, ports)], AtRefusal.Skip).Granted);

    [Fact]
    public void A_smaller_ask_further_on_still_fits_unless_the_switch_stops() => Assert.Multiple(
        () => Assert.Equal([true, false, true], PortBudget.Fill(50, [30, 30, 15.4], AtRefusal.Skip).Granted),
        () => Assert.Equal([true, false, false], PortBudget.Fill(50, [30, 30, 15.4], AtRefusal.Stop).Granted));

    [Fact]
    public void An_unknown_ask_is_refused_before_anything_is_served() =>
        Assert.Throws<ArgumentOutOfRangeException>("asks", () => PortBudget.Fill(50, [30, double.NaN], AtRefusal.Skip));
}
