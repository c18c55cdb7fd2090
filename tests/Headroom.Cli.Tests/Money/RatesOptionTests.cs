using Headroom.Cli.Tests.Commands;

namespace Headroom.Cli.Tests.Money;

public sealed class RatesOptionTests
{
    private static readonly string Job = Repository.PathOf("examples/one-desk/job.yaml");

    [Fact]
    public void The_rates_of_the_firm_make_an_offer_of_a_job_without_money()
    {
        Assert.DoesNotContain("money/offer/margin", TestDesk.Run(["study", Job, "--format", "csv"]).Out, StringComparison.Ordinal);
        var result = Run.Headroom("study", "examples/one-desk/job.yaml", "--rates", "examples/firm-rates.yaml", "--format", "csv");
        Assert.Equal("", result.Err);
        Assert.Contains("money/offer/margin", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_figure_tells_the_line_of_the_file_it_comes_from()
    {
        var result = Run.Headroom("explain", "examples/one-desk/job.yaml", "money/offer/margin", "--rates", "examples/firm-rates.yaml");
        Assert.Equal("", result.Err);
        Assert.Contains("examples/firm-rates.yaml:5", result.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-such.yaml", "FILE001")]
    [InlineData("examples/one-desk/job.yaml", "JOB001")]
    public void A_file_that_holds_no_rates_is_refused(string file, string code)
    {
        var result = TestDesk.Run(["study", Job, "--rates", file.StartsWith("ex", StringComparison.Ordinal) ? Repository.PathOf(file) : file]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains(code, result.Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("study")]
    [InlineData("explain", "offer/price")]
    [InlineData("restart")]
    [InlineData("years")]
    [InlineData("remedies")]
    [InlineData("papers", "--out", "never-made")]
    public void Every_command_that_takes_rates_reads_them(string command, params string[] words)
    {
        var result = TestDesk.Run([command, Job, .. words, "--rates", "not-there.yaml"]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Contains("not-there.yaml", result.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_of_jobs_takes_them_too_and_does_not_take_them_for_a_job()
    {
        var result = TestDesk.Run(["study", Repository.PathOf("examples"), "--rates", Repository.PathOf("examples/firm-rates.yaml")]);
        Assert.DoesNotContain("firm-rates", result.Out, StringComparison.Ordinal);
        Assert.Contains("4 jobs", result.Out, StringComparison.Ordinal);
    }
}
