using Headroom.Domain.Ledgers;
using Headroom.Engineering.Remedies;
using Headroom.Engineering.Tests.Studies;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Remedies;

/// <summary>What is kept, what is left out, and in which order.</summary>
public sealed class RemedySearchTests
{
    private static readonly Lazy<RemedyResult> Barn = new(() => Found());

    [Fact]
    public void What_costs_nothing_comes_first_then_gain_for_the_money_then_rough_savings_then_what_has_no_price()
    {
        static int Group(Remedy remedy) => (remedy.Cost.Amount, remedy.Certainty) switch { (null, _) => 3, (< 0, Certainty.Rough) => 2, ( > 0, _) => 1, _ => 0 };
        var remedies = Barn.Value.Remedies;
        Assert.Equal([0, 1, 2, 3], remedies.Select(Group).Distinct());
        Assert.Equal(remedies.Select(Group).Order(), remedies.Select(Group));
        var paid = remedies.Where(remedy => Group(remedy) == 1).Select(remedy => remedy.GainPerHundred!.Value).ToList();
        Assert.Equal(paid.OrderDescending(), paid);
    }

    [Fact]
    public void Nothing_is_kept_that_another_does_as_well_for_no_more()
    {
        var result = Barn.Value;
        Assert.True(result.Dominated > 0);
        double[] Left(Remedy remedy) => [.. result.Asked.Select(asked => remedy.After.Entries.FirstOrDefault(entry => entry.Id == asked.Id) is { } entry ? Shortage.Of(entry) : 0)];
        foreach (var (worse, better) in result.Remedies.SelectMany(one => result.Remedies.Where(other => other != one).Select(other => (one, other))))
        {
            var asGood = Left(better).Zip(Left(worse)).All(pair => pair.First <= pair.Second) && better.NetGain >= worse.NetGain && better.Certainty <= worse.Certainty
                && better.Cautions.All(worse.Cautions.Contains) && better.Cost.Amount < worse.Cost.Amount;
            Assert.False(asGood, $"{worse.Text} is no better than {better.Text}");
        }
    }

    [Fact]
    public void A_dearer_supply_that_mends_no_more_is_left_out()
    {
        const string Yaml = """
            survey: {spaces: {closet: {kind: cupboard}}, endpoints: {ap-1: {model: dish}, ap-2: {model: dish}}}
            designs: {d: {switches: {sw-1: {model: meek, in: closet}}, patch: {ap-1: sw-1/1, ap-2: sw-1/2}}}
            """;
        var result = RemedySite.Find(Yaml, "switch model");
        Assert.DoesNotContain(result.Remedies, remedy => remedy.Text.StartsWith("sw-1: roomy", StringComparison.Ordinal));
        Assert.True(result.Dominated > 0);
    }

    [Fact]
    public void Each_is_confirmed_by_a_study_of_the_design_it_makes()
    {
        var job = Job();
        Assert.All(Barn.Value.Remedies, remedy =>
        {
            var design = remedy.Change with { Id = "taken" };
            var after = Engineering.Study.Run(job with { Designs = [.. job.Designs, design] }, Models, new StudyRequest("taken", Site.Today, [], null));
            Assert.Equal(remedy.After.Entries.Select(entry => (entry.Id, entry.Verdict, entry.Left)), after.Entries.Select(entry => (entry.Id, entry.Verdict, entry.Left)));
            Assert.True(Shortage.Of(after) < Shortage.Of(Barn.Value.Before), remedy.Text);
        });
    }

    [Fact]
    public void What_gets_worse_elsewhere_is_said()
    {
        // A supply of which nobody knows the weight mends the minutes, but whether the rack holds it is not known any more.
        const string Yaml = """
            policy: {outage: {runtime: 200 min}}
            survey:
              spaces: {closet: {kind: cupboard, temperature: {weekday: 22 °C}}, hall: {kind: open office}}
              racks: {A: {in: closet, height: 12 U, depth: 400 mm, load: 20 kg}}
              drops: {K-1..K-4: {from: closet, to: hall, length: 20 m, cable: cat6-24}}
              endpoints: {ap-1..ap-4: {model: dish, drop: K-1..K-4}}
            designs: {d: {switches: {sw-1: {model: roomy, in: closet, fed-by: ups-1}}, patch: {K-1..K-4: sw-1/1..4}, standby: {ups-1: {model: holm, in: A, unit: 1}}}}
            """;
        var result = RemedySite.Find(Yaml, "standby model");
        Assert.Contains(result.Remedies, remedy => remedy.Worse.Any(change => change.Before.Id == "racking/A/weight" && change.After.Verdict == Verdict.Unknown));
    }

    [Fact]
    public void What_the_study_calls_no_gain_is_not_kept() => Assert.All(Barn.Value.Remedies, remedy =>
    {
        Assert.True(remedy.Gain > 0 && remedy.NetGain > 0, remedy.Text);
        Assert.Equal(remedy.NetGain, Shortage.Of(Barn.Value.Before) - Shortage.Of(remedy.After), 1e-9);
        Assert.NotEmpty(remedy.Better.Select(change => change.Before.Id).Concat(remedy.Gone.Select(entry => entry.Id)));
    });

    [Fact]
    public void It_comes_to_the_same_each_time()
    {
        static IEnumerable<(string, double, decimal?)> Told(RemedyResult result) => result.Remedies.Select(remedy => (remedy.Text, remedy.NetGain, remedy.Cost.Amount));
        Assert.Equal(Told(Barn.Value), Told(Found()));
    }

    [Fact]
    public void Of_one_entry_only_what_helps_it_is_kept()
    {
        var result = Found("power/field-link/volts");
        Assert.NotEmpty(result.Remedies);
        Assert.All(result.Remedies, remedy => Assert.Contains(remedy.Better, change => change.Before.Id == "power/field-link/volts"));
    }

    [Fact]
    public void Where_nothing_is_amiss_there_is_nothing_to_find()
    {
        var result = Found("power/cam-1/watts");
        Assert.Equal(["power/cam-1/watts"], result.Asked.Select(entry => entry.Id));
        Assert.Empty(result.Remedies);
    }

    [Fact]
    public void An_entry_that_is_not_there_is_refused() => Assert.Throws<ArgumentException>(() => Found("power/cam-99/watts"));

    [Fact]
    public void A_price_that_nobody_knows_stays_unknown() =>
        Assert.Contains(Barn.Value.Remedies, remedy => remedy is { Kind: "wider way", Cost: { Amount: null, NotKnown: not null } });

    [Theory]
    [InlineData(Verdict.Clear, 5, 10, 0, 0)]
    [InlineData(Verdict.Tight, 9, 10, 4, 0.75)]
    [InlineData(Verdict.Short, 12, 10, 4, 2.2)]
    [InlineData(Verdict.Short, 90, 10, 4, 3)]
    [InlineData(Verdict.Unknown, 0, 10, 4, 1)]
    public void How_much_is_amiss_is_one_number(Verdict verdict, double demand, double limit, double reserve, double shortage) => Assert.Equal(
        shortage, Shortage.Of(Barn.Value.Before.Entries[0] with { Studied = verdict, Demand = demand, Limit = limit, Reserve = reserve, Overruled = null }), 1e-9);

    private static Domain.Catalogues.Catalogue Models => Differences.TwoDesigns.Models;

    private static Domain.Jobs.Job Job() => JobFile.Read(Repository.PathOf("examples/barn-vets/job.yaml"), Models).Value!;

    private static RemedyResult Found(params string[] entries) => RemedySearch.Find(Job(), Models, new(new StudyRequest("as-offered", Site.Today, [], null), entries));
}
