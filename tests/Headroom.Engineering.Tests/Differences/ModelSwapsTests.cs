using Headroom.Domain.Rules;
using Headroom.Engineering.Differences;

namespace Headroom.Engineering.Tests.Differences;

public sealed class ModelSwapsTests
{
    private static SwappedJob Swap(params string[] swaps)
    {
        var job = TwoDesigns.Job();
        return ModelSwaps.Of(job, TwoDesigns.Design(job, "first"), [.. swaps.Select(swap => swap.Split('=')).Select(parts => new ModelSwap(parts[0], parts[1]))], TwoDesigns.Models);
    }

    [Fact]
    public void A_switch_swapped_comes_to_what_the_design_with_it_comes_to()
    {
        var swapped = Swap("wren-b=redshank").Job!;
        var job = TwoDesigns.Job();
        var difference = LedgerDifference.Of(TwoDesigns.Study(job, "second"), TwoDesigns.Study(swapped, null));
        Assert.Equal(difference.Before.Entries.Count, difference.Same);
        Assert.Equal("first, redshank for wren-b", difference.After.Design);
    }

    [Fact]
    public void Swapped_to_and_fro_it_is_what_it_was()
    {
        var swapped = Swap("wren-b=redshank", "redshank=wren-b", "bulrush=pipit", "cat6-23=cat5e-24", "cat5e-24=cat6-23").Job!;
        Assert.Equal(TwoDesigns.Study(Swap("bulrush=pipit").Job!, null).Entries.Select(entry => (entry.Id, entry.Left)), TwoDesigns.Study(swapped, null).Entries.Select(entry => (entry.Id, entry.Left)));
    }

    [Theory]
    [InlineData("bulrush=pipit", "pipit in place of bulrush at ap-1 and ap-2")]
    [InlineData("cat6-23=cat5e-24", "cat5e-24 in place of cat6-23 at K-1, K-2 and K-3")]
    public void What_the_survey_has_is_swapped_and_told(string swap, string told)
    {
        var swapped = Swap(swap);
        Assert.Equal(told, Assert.Single(swapped.Survey).Text);
        Assert.DoesNotContain(JobRules.Check(swapped.Job!, TwoDesigns.Models), finding => finding.Severity == Headroom.Domain.Findings.Severity.Error);
    }

    [Fact]
    public void Thinner_copper_leaves_fewer_volts()
    {
        var difference = LedgerDifference.Of(TwoDesigns.Study(TwoDesigns.Job(), "first"), TwoDesigns.Study(Swap("cat6-23=cat5e-24").Job!, null));
        Assert.All(difference.After.Entries.Where(entry => entry.Id.EndsWith("/volts", StringComparison.Ordinal)), entry =>
            Assert.True(entry.Left < difference.Before.Entries.Single(before => before.Id == entry.Id).Left));
    }

    [Theory]
    [InlineData("wren-c=tarn", "nothing of design first is a 'wren-c'; did you mean wren-b?; it has wren-b, bulrush, pipit and cat6-23")]
    [InlineData("wren-b=redshak", "the catalogue has no model 'redshak' that is a switch, as wren-b is; did you mean redshank?; 'headroom catalogue list' lists all")]
    [InlineData("wren-b=cat6-23", "wren-b is a switch and cat6-23 a cable; a swap keeps the kind")]
    public void What_cannot_be_swapped_is_refused_with_what_is_right(string swap, string complaint)
    {
        var swapped = Swap(swap);
        Assert.Null(swapped.Job);
        Assert.Equal([complaint], swapped.Complaints);
    }

    [Fact]
    public void All_that_is_wrong_with_several_swaps_is_said_in_one_go() => Assert.Equal(2, Swap("wren-c=tarn", "bulrush=bulrsh").Complaints.Count);

    [Fact]
    public void The_job_itself_stays_as_it_is()
    {
        var job = TwoDesigns.Job();
        ModelSwaps.Of(job, TwoDesigns.Design(job, "first"), [new("bulrush", "pipit"), new("wren-b", "redshank")], TwoDesigns.Models);
        Assert.Equal(["bulrush", "bulrush", "pipit"], job.Survey.Endpoints.Select(endpoint => endpoint.Model));
        Assert.Equal("wren-b", job.Designs[0].Switches[0].Model);
    }
}
