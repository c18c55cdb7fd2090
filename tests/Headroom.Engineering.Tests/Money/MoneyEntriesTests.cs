using Headroom.Domain.Ledgers;
using Headroom.Engineering.Tests.Racking;

namespace Headroom.Engineering.Tests.Money;

/// <summary>Offers of small made-up sites.</summary>
public sealed class MoneyEntriesTests
{
    private const string Survey = "drops: {K-1: {from: closet, to: room, length: 20 m, cable: plain}, K-2: {from: closet, to: room, length: 20 m, cable: plain, existing: yes}}\nendpoints: {h: {model: handset, drop: K-1}, t: {model: till, drop: K-2}}";
    private const string Design = "switches: {sw-1: {model: box}}, patch: {K-1: sw-1/1, K-2: sw-1/2}";

    private static Ledger With(string money, string survey = Survey, string rest = "") => RackJob.Study(survey, Design, $"money: {{{money}}}\n{rest}");

    private static double? Figure(Ledger ledger, string id) => ledger.Figures.Single(figure => figure.Id == $"money/{id}").Value;

    [Fact]
    public void What_the_design_has_and_what_is_laid_is_offered_and_what_lies_or_is_the_clients_own_is_not()
    {
        var ledger = With("margin: 20 %, tax: {standard: 19 %}");
        // 200 + 40 + 22 m of 0.5 = 251 at cost; each line at 20 %: 250 + 50 + 13.75.
        Assert.Equal(313.75, Figure(ledger, "offer/net"));
        Assert.Equal(59.61, Figure(ledger, "offer/tax"));
        Assert.Equal(373.36, Figure(ledger, "offer/gross"));
        Assert.Equal(251, Figure(ledger, "offer/cost"));
        Assert.DoesNotContain(ledger.Answers, answer => answer.Text.Contains("till", StringComparison.Ordinal));
    }

    [Fact]
    public void Costs_margins_and_hours_are_inside_and_prices_are_not()
    {
        var ledger = With("margin: 20 %, least margin: 15 %, discount: 2 %, budget: 400 EUR, labour: {hour cost: 30 EUR, tasks: {drop: 30/30/30 min, switch: 30/30/30 min, phone: 6/6/6 min}}, afterwards: {hours: 2 h, material: 260 EUR}");
        Assert.Equal(["money/afterwards/hours", "money/afterwards/margin", "money/offer/discount", "money/offer/margin"], ledger.Entries.Where(e => e.Inside).Select(e => e.Id).Order());
        Assert.False(ledger.Entries.Single(e => e.Id == "money/offer/budget").Inside);
        Assert.All(ledger.Figures.Where(figure => figure.Id.StartsWith("money/", StringComparison.Ordinal)), figure => Assert.Equal(figure.Id is "money/offer/cost" or "money/labour/hours", figure.Inside));
        Assert.All(ledger.Answers.Where(answer => answer.Text.Contains("251", StringComparison.Ordinal)), answer => Assert.True(answer.Inside));
    }

    [Fact]
    public void Hours_are_tasks_by_number_times_the_factor_of_the_site()
    {
        // One drop is laid, one switch and one phone are set up: 66 min, times (0.8 + 4 · 1 + 1.8) / 6 = 1.1.
        var ledger = With("margin: 20 %, labour: {hour cost: 30 EUR, difficulty: 0.8/1/1.8, tasks: {drop: 20/30/40 min, switch: 30/30/30 min, phone: 6/6/6 min}}");
        Assert.Equal(1.21, Figure(ledger, "labour/hours")!.Value, 1e-9);
    }

    [Fact]
    public void A_floor_that_a_discount_breaks_is_short_and_the_most_discount_is_said()
    {
        var ledger = With("margin: 20 %, least margin: 18 %, discount: 10 %");
        var (margin, discount) = (ledger.At("money/offer/margin"), ledger.At("money/offer/discount"));
        Assert.Equal((Verdict.Short, Verdict.Short), (margin.Studied, discount.Studied));
        Assert.Equal(100 * (1 - 251 / 0.82 / 313.75), discount.Limit!.Value, 1e-9);
        Assert.Contains("306.1", margin.Advice[0], StringComparison.Ordinal);
    }

    [Fact]
    public void What_has_no_price_is_asked_for_and_never_nothing()
    {
        var ledger = With("margin: 20 %, budget: 900 EUR, least margin: 10 %", Survey.Replace("length: 20 m, cable: plain}, K-2", "cable: plain}, K-2", StringComparison.Ordinal));
        Assert.Equal(Verdict.Unknown, ledger.At("money/offer/budget").Studied);
        Assert.Contains("how long are K-1?", ledger.At("money/offer/budget").Question, StringComparison.Ordinal);
        Assert.Equal(Verdict.Unknown, ledger.At("money/offer/margin").Studied);
        Assert.StartsWith("at least", ledger.Figures.Single(figure => figure.Id == "money/offer/gross").What, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_currencies_are_never_added()
    {
        var ledger = RackJob.Study(Survey, Design, "client: {name: x, currency: GBP}\nmoney: {margin: 20 %, budget: 900 GBP}");
        Assert.Contains("what does box cost in GBP?", ledger.At("money/offer/budget").Question, StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_of_the_job_goes_before_that_of_the_catalogue() =>
        Assert.Equal(151, Figure(With("margin: 20 %", rest: "prices: [{model: box, cost: 100 EUR}]"), "offer/cost"));

    [Fact]
    public void An_option_is_added_up_by_itself()
    {
        var ledger = With("margin: 20 %, tax: {standard: 10 %}, lines: [{what: skip, cost: 80 EUR}, {what: spare, count: 2, cost: 40 EUR, option: later}]");
        Assert.Equal(413.75, Figure(ledger, "offer/net"));
        Assert.Equal(110, Figure(ledger, "later/gross"));
    }

    [Fact]
    public void Owning_counts_energy_and_the_batteries_that_will_be_old()
    {
        // 18 W behind 90 % is 20 W: 175.2 kWh. Blocks of 4 years, 1 year old: changed in years 3 and 7 of 8.
        var ledger = RackJob.Study("endpoints: {h: {model: handset}}", "switches: {sw-1: {model: box}}, standby: {ups-1: {model: block, batteries: 1 year}}", "money: {margin: 0 %, owning: {years: 8, energy: 0.5 EUR, battery visit: 50 EUR}}");
        Assert.Equal(87.6, Figure(ledger, "owning/energy")!.Value, 1e-6);
        Assert.Equal(540 + 8 * 87.6 + 2 * 100, Figure(ledger, "owning/today")!.Value, 1e-6);
    }

    [Fact]
    public void What_the_job_made_counts_hours_material_visits_and_variations()
    {
        var entry = With("margin: 20 %, least margin: 15 %, labour: {hour cost: 30 EUR, hour price: 50 EUR, tasks: {drop: 30/30/30 min, switch: 30/30/30 min, phone: 60/60/60 min}}, afterwards: {hours: 3 h, material: 260 EUR, visits: 2, visit: 10 EUR, variations: [{what: outlet, cost: 20 EUR, price: 60 EUR}]}").At("money/afterwards/margin");
        // Price 313.75 + 100 + 60; cost 90 + 260 + 20 + 20.
        Assert.Equal(100 * (1 - 390 / 473.75), entry.Limit!.Value, 1e-9);
    }

    [Fact]
    public void A_job_without_money_says_nothing_of_it() =>
        Assert.DoesNotContain(RackJob.Study(Survey, Design).Entries, entry => entry.Discipline == "money");

    [Fact]
    public void Every_entry_and_figure_works_itself_out()
    {
        var ledger = With("margin: 20 %, least margin: 15 %, discount: 2 %, budget: 400 EUR, labour: {hour cost: 30 EUR, tasks: {drop: 30/30/30 min, switch: 30/30/30 min, phone: 6/6/6 min}}, owning: {years: 3, energy: 0.3 EUR}, afterwards: {hours: 2 h, material: 260 EUR}");
        Assert.All(ledger.Entries.Where(e => e.Discipline == "money"), entry =>
        {
            Assert.InRange(entry.What.Length, 1, 24);
            Assert.EndsWith(".", entry.Story.Say(entry), StringComparison.Ordinal);
            Assert.NotEmpty(entry.Story.Work(entry).Inputs);
            Assert.NotEmpty(entry.Story.Holds(entry));
        });
        Assert.All(ledger.Figures, figure => Assert.NotEmpty(figure.Work().Source));
    }
}
