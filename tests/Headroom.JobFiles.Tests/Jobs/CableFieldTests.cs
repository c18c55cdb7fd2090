using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Tests.Jobs;

/// <summary>What can be said of pathways, runs and uplinks. All of it is invented.</summary>
public sealed class CableFieldTests
{
    private static Pathway Pathway(string keys) => Read($"  pathways: {{p: {{kind: conduit, {keys}}}}}\n").Survey.Pathways[0];

    private static Job Read(string survey)
    {
        var loaded = JobFile.Parse($"headroom: 1\njob: x\nsurvey:\n  spaces: {{a: {{}}, b: {{}}}}\n{survey}", "job.yaml", CatalogueFiles.ReadShipped().Value!);
        Assert.True(loaded.Ok, string.Join('\n', loaded.Findings));
        return loaded.Value!;
    }

    [Theory]
    [InlineData("3 circuits of 16 A", 3, 16.0, false)]
    [InlineData("1 circuit of 32 A three-phase", 1, 32.0, true)]
    [InlineData("2 circuits", 2, null, false)]
    [InlineData("4 circuits three-phase", 4, null, true)]
    public void Mains_circuits_are_read_as_people_say_them(string text, int count, double? amperes, bool threePhase)
    {
        var circuits = Assert.Single(Pathway($"mains beside: {text}").MainsBeside!);
        Assert.Equal((count, amperes, threePhase), (circuits.Count, circuits.Rating?.Value.Value, circuits.ThreePhase));
    }

    [Fact]
    public void None_and_not_written_are_two_things()
    {
        var (none, open) = (Pathway("mains beside: none, already: none"), Pathway("inside: 30 mm"));
        Assert.Empty(none.MainsBeside!);
        Assert.Empty(none.Already!);
        Assert.Null(open.MainsBeside);
        Assert.Null(open.Already);
        Assert.Equal(2, Pathway("mains beside: [3 circuits of 16 A, 1 circuit of 40 A]").MainsBeside!.Count);
    }

    [Theory]
    [InlineData("mains beside: several")]
    [InlineData("mains beside: 0 circuits of 16 A")]
    [InlineData("mains beside: 3 circuits of 16 V")]
    [InlineData("mains beside: 3 circuits at 16 A")]
    [InlineData("apart: -4 mm")]
    [InlineData("bends: -1")]
    [InlineData("longest pull: 0 m")]
    public void What_makes_no_sense_of_a_pathway_is_refused_with_what_is_allowed(string keys)
    {
        var loaded = JobFile.Parse($"headroom: 1\njob: x\nsurvey:\n  pathways: {{p: {{kind: conduit, {keys}}}}}\n", "job.yaml", CatalogueFiles.ReadShipped().Value!);
        var finding = Assert.Single(loaded.Findings);
        Assert.False(loaded.Ok);
        Assert.All(new[] { finding.Given, finding.Allowed, finding.Advice }, Assert.NotEmpty);
    }

    [Fact]
    public void A_run_says_what_lies_there_and_what_light_meets()
    {
        var drops = Read("  drops:\n    K-1: {from: a, to: b, length: 9 m, cable: cat6-23, existing: yes}\n    F-1: {from: a, to: b, length: 60 m, cable: om4-8, mated pairs: 4, splices: 2}\n").Survey.Drops;
        Assert.True(drops[0].Existing);
        Assert.Equal((4, 2), (drops[1].MatedPairs, drops[1].Splices));
    }
}
