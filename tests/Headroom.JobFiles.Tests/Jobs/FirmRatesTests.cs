using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Tests.Jobs;

/// <summary>A firm's rates below what a job says itself; all of it is invented.</summary>
public sealed class FirmRatesTests : IDisposable
{
    private const string Whole = """
        rates: 1
        margin: 26 %
        least margin: 17 %
        tax: {standard: 19 %}
        each: {cord: 2 EUR, label: 0.1 EUR}
        labour:
          hour cost: 36 EUR
          tasks: {drop: 20 / 30 / 40 min, switch: 10 / 20 / 30 min}
        """;

    private readonly string _file = Path.Combine(Path.GetTempPath(), $"headroom-rates-{Guid.NewGuid():N}.yaml");

    public void Dispose() => File.Delete(_file);

    private Loaded<FirmRates> Rates(string text)
    {
        File.WriteAllText(_file, text);
        return FirmRatesFile.Read(_file);
    }

    private MoneyTerms Money(string job)
    {
        var read = JobFile.ParseMeanwhile("headroom: 1\njob: x\n" + job, "job.yaml", null, () => CatalogueFiles.ReadShipped().Value!, Rates(Whole).Value);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return read.Value!.Money!;
    }

    [Fact]
    public void A_job_that_says_nothing_of_money_has_the_rates_with_their_place()
    {
        var money = Money("");
        Assert.Equal((0.26, 0.17, 36m), (money.Margin!.Value.Value, money.LeastMargin!.Value.Value, money.Labour!.HourCost!.Value.Amount));
        Assert.Equal((_file, 2), (money.Margin.At.File, money.Margin.At.Line));
    }

    [Fact]
    public void What_the_job_says_wins_key_by_key_and_task_by_task()
    {
        var money = Money("money: {margin: 31 %, budget: 900 EUR, each: {cord: 3 EUR}, labour: {tasks: {drop: 50 / 60 / 70 min}}}\n");
        Assert.Equal((0.31, "job.yaml"), (money.Margin!.Value.Value, money.Margin.At.File));
        Assert.Equal((0.17, _file), (money.LeastMargin!.Value.Value, money.LeastMargin.At.File));
        Assert.Equal((3m, 0.1m), (money.Each["cord"].Value.Amount, money.Each["label"].Value.Amount));
        Assert.Equal((60m, 20m), (money.Labour!.Tasks["drop"].Likely, money.Labour.Tasks["switch"].Likely));
        Assert.Equal(36m, money.Labour.HourCost!.Value.Amount);
        Assert.Equal(900m, money.Budget!.Value.Amount);
    }

    [Fact]
    public void Tax_of_the_job_stands_in_place_of_that_of_the_firm() =>
        Assert.Equal(["lower"], Money("money: {tax: {lower: 7 %}}\n").Taxes.Select(tax => tax.Name));

    [Theory]
    [InlineData("margin: 26 %")]
    [InlineData("rates: 1\nmargin: 26")]
    [InlineData("rates: 1\nmargin: 95 %")]
    [InlineData("rates: 2\nmargin: 26 %")]
    [InlineData("rates: 1\nbudget: 900 EUR")]
    [InlineData("rates: 1\nlabour: {tasks: {drop: 20 min}}")]
    [InlineData("- rates")]
    public void A_slip_in_the_file_is_refused_with_its_place(string text)
    {
        var read = Rates(text);
        Assert.Null(read.Value);
        Assert.All(read.Findings, finding => Assert.Equal((Severity.Error, _file), (finding.Severity, finding.At.File)));
        Assert.NotEmpty(read.Findings);
    }

    [Fact]
    public void A_file_that_is_not_there_is_said_so() => Assert.Equal("FILE001", Assert.Single(FirmRatesFile.Read("no-such-rates.yaml").Findings).Code);
}
