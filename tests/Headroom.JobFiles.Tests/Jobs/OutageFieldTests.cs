using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Tests.Jobs;

/// <summary>What can be said of outages. All of it is invented.</summary>
public sealed class OutageFieldTests
{
    private static readonly string[] Tables = ["100 W: 10 min, 150 W: 10 min", "100 W: 10 min, 150 W: 20 min"];

    private static Loaded<Job> Read(string policy, string standby) => JobFile.Parse(
        $"headroom: 1\njob: x\npolicy: {{outage: {{{policy}}}}}\ndesigns: {{d: {{standby: {{u: {{model: holm, {standby}}}}}}}}}\n", "job.yaml", CatalogueFiles.ReadShipped().Value!);

    [Fact]
    public void Wishes_stages_and_what_else_hangs_there_are_read()
    {
        var job = Read("runtime: 20 min, keep: [phone, door station], back within: 5 min", "runtime: 0.5 h, also: {router: 11 W}, sheds: {high: 25 min, low: 5 min}").Value!;
        Assert.Equal((1200, 300), (job.Policy.Outage.Runtime!.Value.Value, job.Policy.Outage.BackWithin!.Value.Value));
        Assert.Equal(["phone", "door station"], job.Policy.Outage.Keep);
        var unit = job.Designs[0].Standby[0];
        Assert.Equal((1800, "router", 11), (unit.Wanted!.Value.Value, unit.Also![0].Name, unit.Also[0].Watts.Value.Value));
        Assert.Equal([Priority.Low, Priority.High], unit.Sheds!.Select(stage => stage.Priority));
    }

    [Theory]
    [InlineData("runtime: 20", "also: {router: 1 W}")]
    [InlineData("runtime: 20 W", "also: {router: 1 W}")]
    [InlineData("back within: -1 min", "also: {router: 1 W}")]
    [InlineData("runtime: 20 min", "sheds: {critical: 5 min}")]
    [InlineData("runtime: 20 min", "also: {router: 30000 W}")]
    [InlineData("keep: [phon]", "also: {router: 1 W}")]
    public void What_makes_no_sense_is_refused(string policy, string standby)
    {
        var read = Read(policy, standby);
        Assert.False(read.Ok);
        Assert.All(read.Findings, finding => Assert.NotEmpty(finding.Advice));
    }

    [Fact]
    public void A_line_has_its_boxes_and_their_start_beside_its_rates()
    {
        var line = JobFile.Parse("headroom: 1\njob: x\nsurvey: {lines: {line: {down: 50 Mb/s, boxes: [router, line-box], boot: 3 min}}}\n", "job.yaml", CatalogueFiles.ReadShipped().Value!).Value!.Survey.Lines[0];
        Assert.Equal(("line", 50e6, 180), (line.Id, line.Down!.Value.Value, line.Boot!.Value.Value));
        Assert.Equal(["router", "line-box"], line.Boxes);
    }

    [Fact]
    public void The_key_that_held_the_boxes_once_is_refused_with_what_to_write()
    {
        var read = JobFile.Parse("headroom: 1\njob: x\nsurvey:\n  line: {boxes: [router], boot: 3 min}\n", "job.yaml", CatalogueFiles.ReadShipped().Value!);
        var finding = Assert.Single(read.Findings, finding => finding.Severity == Headroom.Domain.Findings.Severity.Error);
        Assert.Equal(4, finding.At.Line);
        Assert.Contains("write its 'boxes' and 'boot' below 'lines'", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_discharge_table_whose_times_do_not_fall_is_refused() => Assert.All(Tables, table =>
    {
        var read = CatalogueFiles.Parse($"catalogue: 1\nbatteries: {{b: {{chemistry: lead, nominal: 12 V, discharge: {{{table}}}}}}}\n", "own.yaml", CatalogueFiles.ReadShipped().Value!);
        Assert.Equal("CAT036", Assert.Single(read.Findings).Code);
    });
}
