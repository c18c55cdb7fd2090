using Headroom.Domain.Catalogues;
using Headroom.JobFiles.Tests.Sheets;

namespace Headroom.JobFiles.Tests.Editing;

/// <summary>One record told by its keys goes into a job, when the job holds together with it.</summary>
public sealed class JobRecordTests
{
    private const string Job = "headroom: 1 # by hand\njob: x\nsurvey: {spaces: {hall: {}}}\ndesigns: {d: {switches: {sw-1: {model: alder}}}}\n";

    private static readonly Catalogue Shipped = CatalogueFiles.ReadShipped().Value!;

    [Fact]
    public void A_reading_goes_in_and_all_else_stays_as_it_was()
    {
        var recorded = Add(Job, ("what", "watts"), ("at", "sw-1/5"), ("value", "6.4 ± 0.2 W"), ("at-most", "yes"), ("on", "2026-11-14"));
        Assert.Equal(Job + "\nreadings:\n  - {what: watts, at: sw-1/5, value: 6.4 ± 0.2 W, at most: yes, on: 2026-11-14}\n", recorded.Text);
        Assert.Equal(Job, recorded.Before);
    }

    [Theory]
    [InlineData("what was typed: error JOB006: value of the reading is '6.4'", "what=watts", "at=sw-1/5", "value=6.4")]
    [InlineData("what was typed: error JOB011: what of the reading is 'wats'", "what=wats", "at=sw-1/5", "value=6.4 W")]
    [InlineData("what was typed: error JOB003: value of the reading is not written", "what=watts", "at=sw-1/5")]
    [InlineData("what was typed: error JOB001: the reading has a key 'wit'", "what=watts", "at=sw-1/5", "value=6.4 W", "wit=meter")]
    [InlineData("job.yaml:7:5: error RUL025", "what=watts", "at=sw-9/5", "value=6.4 W")]
    [InlineData("job.yaml:7:5: error RUL040", "what=watts", "at=sw-1/99", "value=6.4 W")]
    public void What_would_not_hold_together_is_refused(string expected, params string[] fields)
    {
        using var folder = new SheetFolder(Job);
        var recorded = JobRecord.AddReading(folder.Job, [.. fields.Select(field => KeyValuePair.Create(field.Split('=')[0], field.Split('=')[1]))], Shipped);
        Assert.Null(recorded.Text);
        Assert.StartsWith(expected, folder.Plain(recorded.Findings[0].ToString()), StringComparison.Ordinal);
    }

    [Fact]
    public void An_overruling_takes_the_place_of_that_of_the_same_entry()
    {
        using var folder = new SheetFolder(Job + "overrulings:\n  - {entry: power/sw-1/watts, because: a, by: me, on: 2026-11-14} # first\n");
        var recorded = JobRecord.AddOverruling(folder.Job, [new("entry", "power/sw-1/watts"), new("because", "seen: twice"), new("by", "J. Marsh"), new("on", "2026-11-15")], Shipped);
        Assert.Equal(Job + "overrulings:\n  - {entry: power/sw-1/watts, because: \"seen: twice\", by: J. Marsh, on: 2026-11-15} # first\n", recorded.Text);
    }

    private static RecordedJob Add(string job, params (string Key, string Value)[] fields)
    {
        using var folder = new SheetFolder(job);
        var recorded = JobRecord.AddReading(folder.Job, [.. fields.Select(field => KeyValuePair.Create(field.Key, field.Value))], Shipped);
        Assert.Equal("", string.Join('\n', recorded.Findings));
        return recorded;
    }
}
