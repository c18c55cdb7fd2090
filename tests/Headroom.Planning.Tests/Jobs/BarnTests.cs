using Headroom.Domain.Ledgers;

namespace Headroom.Planning.Tests.Jobs;

public sealed class BarnTests
{
    [Fact]
    public void The_cheapest_design_of_the_barn_is_proved_and_the_study_has_nothing_against_it()
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        var plan = Planner.Propose(ShippedJobs.Of("barn-vets"), ShippedJobs.Catalogue, new PlanRequest(ShippedJobs.Day) { Effort = new(20) { Stop = stop.Token, Told = (a, b) => Console.WriteLine($"{clock.ElapsedMilliseconds} {a} {b}") } });
        foreach (var p in plan.Proposals)
        {
            TestContext.Current.TestOutputHelper!.WriteLine($"{string.Join('+', p.Roles)}: {p.Bought} {p.Cost} {p.Proof} units {p.Units} free {p.FreePorts}/{p.FreePowered}/{p.FreeWatts} loud {p.Loudest} moved {p.Moved} {p.Ledger.Verdict} bind {string.Join(' ', p.Binding)}");
            foreach (var s in p.Settings)
                TestContext.Current.TestOutputHelper!.WriteLine("   " + s);
        }

        foreach (var r in plan.Refused)
            TestContext.Current.TestOutputHelper!.WriteLine(r.ToString());
        foreach (var r in plan.Clashes)
            TestContext.Current.TestOutputHelper!.WriteLine(r.ToString());
        foreach (var r in plan.Front)
            TestContext.Current.TestOutputHelper!.WriteLine(r.ToString());
        TestContext.Current.TestOutputHelper!.WriteLine(string.Join("; ", plan.Assumed) + plan.Studied);
        var cheapest = plan.Proposals[0];
        Assert.True(cheapest.Proof.Proved);
        Assert.NotEqual(Verdict.Short, cheapest.Ledger.Verdict);
    }
}
