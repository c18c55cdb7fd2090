using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Text;

public sealed class ExplainRequestTests
{
    [Theory]
    [InlineData("examples/barn/job.yaml", "measured, examples/barn/job.yaml:65:30", "measured, job.yaml:65:30")]
    [InlineData("job.yaml", "measured, job.yaml:65:30", "measured, job.yaml:65:30")]
    [InlineData("-", "standard input:65:30", "standard input:65:30")]
    [InlineData("a/job.yaml", "catalogue/switches.yaml:1:2", "catalogue/switches.yaml:1:2")]
    [InlineData("a\\job.yaml", "a\\job.yaml:1:2", "job.yaml:1:2")]
    public void The_job_file_goes_by_its_name_alone(string file, string origin, string shown) =>
        Assert.Equal(shown, new ExplainRequest(file, new ShownUnits(imperial: false)).Shorten(origin));
}
