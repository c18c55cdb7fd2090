using Headroom.Domain.Jobs;
using Headroom.Engineering.Money;

namespace Headroom.Engineering.Tests.Money;

/// <summary>What holds of every offer. All figures are made up.</summary>
public sealed class QuotePropertyTests
{
    private static readonly (string Name, decimal Rate)[] Taxes = [("standard", 0.19m), ("reduced", 0.07m), ("free", 0m)];

    private static readonly Gen<PricedLine> Lines = Gen.Select(Gen.Int[1, 50], Gen.Int[0, 3_000_000], Gen.Int[0, 60], Gen.Int[0, 3]).Select((count, cents, margin, tax) =>
    {
        var cost = count * cents / 1000m;
        return new PricedLine("line", count, "", cost, Rounding.Of(Margins.Price(cost, margin / 100m), 2, TieRule.Away), tax == 3 ? null : Taxes[tax].Name, null);
    });

    private static readonly Gen<(PricedLine[] Lines, QuoteTerms Terms)> Quotes =
        Gen.Select(Lines.Array[1, 30], Gen.Int[0, 40], Gen.Bool, Gen.Int[0, 2]).Select((lines, discount, byLine, ties) => (lines, new QuoteTerms(Taxes, discount / 100m, byLine, (TieRule)ties, 2)));

    [Fact]
    public void Lines_groups_and_totals_of_500_offers_agree_to_the_cent() => Quotes.Sample(
        one =>
        {
            var quote = Quote.Of(one.Lines, one.Terms);
            Assert.Equal(one.Lines.Sum(line => line.Net!.Value), quote.Before);
            Assert.Equal(quote.Before - quote.Discount, quote.Net);
            Assert.Equal(quote.Groups.Sum(group => group.Base) + quote.Groups.Sum(group => group.Tax), quote.Gross);
            foreach (var amount in new[] { quote.Before, quote.Discount, quote.Net, quote.Tax, quote.Gross }.Concat(quote.Groups.SelectMany(group => new[] { group.Lines, group.Discount, group.Base, group.Tax })))
                Assert.Equal(Math.Round(amount, 2), amount);
        },
        iter: 500);

    [Fact]
    public void Tax_of_a_group_is_within_half_a_cent_a_rounding_of_what_its_rate_says() => Quotes.Sample(
        one => Assert.All(Quote.Of(one.Lines, one.Terms).Groups, group => Assert.True(
            Math.Abs(group.Tax - group.Base * group.Rate) <= (one.Terms.TaxByLine ? 0.005m * (one.Lines.Length + 1) : 0.005m))),
        iter: 500);

    [Fact]
    public void A_dearer_line_never_makes_a_cheaper_offer() => Quotes.Sample(one =>
    {
        PricedLine[] dearer = [one.Lines[0] with { Net = one.Lines[0].Net + 1 }, .. one.Lines[1..]];
        Assert.True(Quote.Of(dearer, one.Terms).Gross >= Quote.Of(one.Lines, one.Terms).Gross);
    });

    [Fact]
    public void The_order_of_lines_changes_nothing() => Quotes.Sample(one =>
        Assert.Equal(Quote.Of(one.Lines, one.Terms).Gross, Quote.Of(one.Lines.Reverse(), one.Terms).Gross));

    [Fact]
    public void At_the_price_of_a_margin_the_margin_remains_and_the_most_discount_leaves_the_floor() =>
        Gen.Select(Gen.Int[1, 1_000_000], Gen.Int[0, 89], Gen.Int[0, 89]).Sample((cents, margin, floor) =>
        {
            var (cost, wanted, least) = (cents / 100m, margin / 100m, floor / 100m);
            var price = Margins.Price(cost, wanted);
            Assert.Equal((double)wanted, (double)Margins.Of(cost, price)!.Value, 1e-12);
            var kept = price * (1 - Margins.MostDiscount(cost, price, least)!.Value);
            Assert.Equal((double)least, (double)Margins.Of(cost, kept)!.Value, 1e-12);
            Assert.Equal((double)wanted, (double)Margins.OfMarkUp(wanted / (1 - wanted)), 1e-12);
        });

    [Fact]
    public void Shares_add_up_and_none_is_a_coin_or_more_from_its_weight() =>
        Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[1, 100].Array[1, 12]).Sample((cents, weights) =>
        {
            var shares = Shares.Of(cents / 100m, [.. weights.Select(weight => (decimal)weight)], 2);
            Assert.Equal(cents / 100m, shares.Sum());
            for (var i = 0; i < weights.Length; i++)
                Assert.True(Math.Abs(shares[i] - cents / 100m * weights[i] / weights.Sum()) < 0.01m);
        });

    [Fact]
    public void Negative_money_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Margins.Price(-1, 0.2m));
        Assert.Throws<ArgumentOutOfRangeException>(() => Margins.Price(1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Margins.Of(1, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Shares.Of(-1, [1], 2));
    }
}
